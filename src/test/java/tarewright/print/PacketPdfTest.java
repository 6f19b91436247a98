package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import tarewright.document.Sheet;
import tarewright.print.PacketPdf.Part;

/** A section's documents in one file, in copying order: still tagged, still archival (ISO 14289-1, ISO 19005-2 by veraPDF), still the same bytes. */
class PacketPdfTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());
    private static final byte[] HANDOUT = PRINTER.print(SampleSheets.handout(Sheet.Paper.A4)).pdf();
    private static final byte[] OTHER = PRINTER.print(new RandomSheets(3).sheet()).pdf();

    private static List<Part> parts() {
        return List.of(new Part("Handout", HANDOUT, 3), new Part("Another", OTHER, 2));
    }

    @Test
    void aPacketIsTaggedAndArchivalLikeItsDocuments() throws Exception {
        for (boolean doubleSided : List.of(true, false)) {
            byte[] packet = PacketPdf.of("Mon-A", parts(), doubleSided);
            for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
                VeraPdf.Outcome outcome = VeraPdf.check(packet, flavour);
                assertEquals(List.of(), outcome.failures(), flavour + ", double-sided " + doubleSided);
                assertTrue(outcome.checks() > 100);
            }
        }
    }

    @Test
    void everyCopyBeginsOnASheetOfItsOwnAndHasABookmark() throws Exception {
        try (PDDocument packet = Loader.loadPDF(PacketPdf.of("Mon-A", parts(), true)); PDDocument handout = Loader.loadPDF(HANDOUT);
                PDDocument other = Loader.loadPDF(OTHER)) {
            int first = even(handout.getNumberOfPages());
            int second = even(other.getNumberOfPages());
            assertEquals(3 * first + 2 * second, packet.getNumberOfPages());
            List<String> bookmarks = new ArrayList<>();
            for (PDOutlineItem item : packet.getDocumentCatalog().getDocumentOutline().children()) {
                bookmarks.add(item.getTitle() + " " + packet.getPages().indexOf(item.findDestinationPage(packet)));
            }
            assertEquals(List.of("Handout 0", "Handout " + first, "Handout " + 2 * first, "Another " + 3 * first, "Another " + (3 * first + second)), bookmarks);
            assertEquals(text(handout, 1, 1), text(packet, first + 1, first + 1));
            assertEquals("Mon-A", packet.getDocumentInformation().getTitle());
        }
    }

    @Test
    void singleSidedCopiesFollowWithoutABlankPage() throws Exception {
        try (PDDocument packet = Loader.loadPDF(PacketPdf.of("Mon-A", parts(), false)); PDDocument handout = Loader.loadPDF(HANDOUT);
                PDDocument other = Loader.loadPDF(OTHER)) {
            assertEquals(3 * handout.getNumberOfPages() + 2 * other.getNumberOfPages(), packet.getNumberOfPages());
        }
    }

    /** A class of sixty must not need more memory or disk than one of six: pages are painted from one stream, and only tags are written for each copy. */
    @Test
    void copiesShareWhatIsPainted() throws Exception {
        int one = PacketPdf.of("Mon-A", List.of(new Part("Handout", HANDOUT, 1)), true).length;
        byte[] sixty = PacketPdf.of("Mon-A", List.of(new Part("Handout", HANDOUT, 60)), true);
        assertTrue(sixty.length < one + 59 * one / 4, one + " bytes for one, " + sixty.length + " for sixty");
        try (PDDocument packet = Loader.loadPDF(sixty); PDDocument handout = Loader.loadPDF(HANDOUT)) {
            int pages = even(handout.getNumberOfPages());
            assertEquals(60 * pages, packet.getNumberOfPages());
            Set<Object> contents = Collections.newSetFromMap(new IdentityHashMap<>());
            for (int copy = 0; copy < 60; copy++) {
                PDPage first = packet.getPage(copy * pages);
                contents.add(first.getCOSObject().getCOSStream(COSName.CONTENTS));
                assertEquals(copy * handout.getNumberOfPages(), first.getStructParents());
            }
            assertEquals(1, contents.size());
            assertEquals(text(handout, 1, handout.getNumberOfPages()), text(packet, 59 * pages + 1, 59 * pages + handout.getNumberOfPages()));
        }
    }

    @Test
    void theSameDocumentsGiveTheSameBytes() {
        assertArrayEquals(PacketPdf.of("Mon-A", parts(), true), PacketPdf.of("Mon-A", parts(), true));
    }

    @Test
    void aPacketOfNothingIsNone() {
        assertThrows(IllegalArgumentException.class, () -> PacketPdf.of("Mon-A", List.of(), true));
    }

    private static int even(int pages) {
        return pages + pages % 2;
    }

    private static String text(PDDocument document, int from, int to) throws Exception {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(from);
        stripper.setEndPage(to);
        return stripper.getText(document);
    }
}
