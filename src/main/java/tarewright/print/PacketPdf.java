package tarewright.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * All documents of a section in one file, in the order in which they are copied, each as often as it is needed, with a bookmark for each. It stays a tagged file by PDF/UA-1 and PDF/A-2a,
 * and is the same bytes for the same documents.
 */
public final class PacketPdf {
    private static final String PRODUCER = "Tarewright";

    private PacketPdf() {
    }

    /**
     * One document of a packet.
     *
     * @param title what its bookmark says
     * @param pdf a file as {@link PdfPrinter} makes it
     * @param copies how often it stands in the packet, at least 1
     */
    public record Part(String title, byte[] pdf, int copies) {
        public Part {
            pdf = pdf.clone();
            if (copies < 1) {
                throw new IllegalArgumentException("copies " + copies);
            }
        }

        @Override
        public byte[] pdf() {
            return pdf.clone();
        }
    }

    /**
     * Joins documents.
     *
     * @param doubleSided whether a document with an odd number of pages is followed by a blank one, so that the next begins on a sheet of its own
     * @throws IllegalArgumentException if there is no part
     */
    public static byte[] of(String title, List<Part> parts, boolean doubleSided) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a packet of nothing");
        }
        try (PDDocument packet = Loader.loadPDF(parts.get(0).pdf())) {
            PDFMergerUtility merger = new PDFMergerUtility();
            List<Integer> starts = new ArrayList<>();
            List<String> titles = new ArrayList<>();
            for (Part part : parts) {
                for (int copy = 0; copy < part.copies(); copy++) {
                    boolean first = starts.isEmpty();
                    starts.add(first ? 0 : packet.getNumberOfPages());
                    titles.add(part.title());
                    if (!first) {
                        // All of it is copied into the packet, so it need not stay open: a packet holds a hundred of them.
                        try (PDDocument document = Loader.loadPDF(part.pdf())) {
                            merger.appendDocument(packet, document);
                        }
                    }
                    if (doubleSided && (packet.getNumberOfPages() - starts.get(starts.size() - 1)) % 2 == 1) {
                        blank(packet);
                    }
                }
            }
            outline(packet, starts, titles);
            Stamp.of(SafeXml.clean(title), PRODUCER, digest(title, parts, doubleSided)).put(packet);
            ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
            packet.save(out, CompressParameters.DEFAULT_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How many pages a file has. @throws IOException if it is none of ours */
    public static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    /** As large as the page before it, and nothing on it. */
    private static void blank(PDDocument packet) {
        PDRectangle size = packet.getPage(packet.getNumberOfPages() - 1).getMediaBox();
        packet.addPage(new PDPage(new PDRectangle(size.getLowerLeftX(), size.getLowerLeftY(), size.getWidth(), size.getHeight())));
    }

    /** The documents' own bookmarks would number their headings through all copies; a packet is turned by document. */
    private static void outline(PDDocument packet, List<Integer> starts, List<String> titles) {
        PDDocumentOutline outline = new PDDocumentOutline();
        for (int i = 0; i < starts.size(); i++) {
            PDPageXYZDestination top = new PDPageXYZDestination();
            top.setPage(packet.getPage(starts.get(i)));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(titles.get(i));
            item.setDestination(top);
            outline.addLast(item);
        }
        packet.getDocumentCatalog().setDocumentOutline(outline);
    }

    private static String digest(String title, List<Part> parts, boolean doubleSided) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update((title + doubleSided).getBytes(StandardCharsets.UTF_8));
            for (Part part : parts) {
                digest.update((part.title() + part.copies()).getBytes(StandardCharsets.UTF_8));
                digest.update(part.pdf());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
