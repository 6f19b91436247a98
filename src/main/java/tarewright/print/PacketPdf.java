package tarewright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * All documents of a section in one file, in the order in which they are copied, each as often as it is needed, with a bookmark for each. It stays a tagged file by PDF/UA-1 and PDF/A-2a,
 * and is the same bytes for the same documents.
 */
public final class PacketPdf {
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
        try {
            Packet packet = new Packet();
            for (Part part : parts) {
                packet.add(part, doubleSided);
            }
            return packet.bytes(title, digest(title, parts, doubleSided));
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

    private static String digest(String title, List<Part> parts, boolean doubleSided) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update((title + doubleSided).getBytes(StandardCharsets.UTF_8));
            for (Part part : parts) {
                digest.update((part.title() + part.copies()).getBytes(StandardCharsets.UTF_8));
                digest.update(part.pdf);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
