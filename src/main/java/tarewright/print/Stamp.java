package tarewright.print;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import tarewright.document.Sheet;

/**
 * What a PDF file says of itself: title, subject, dates and identity. None of it comes from the clock, so that a second print
 * of the same sheet gives the same bytes; the identity is a digest of the page.
 */
final class Stamp {
    /** The same for every file: when a sheet was made is said by its version, which the footer prints. */
    private static final String DATE = "2026-01-01T00:00:00Z";

    private final String title;
    private final String subject;
    private final String producer;
    private final long identity;

    private Stamp(String title, String subject, String producer, long identity) {
        this.title = title;
        this.subject = subject;
        this.producer = producer;
        this.identity = identity;
    }

    static Stamp of(Sheet sheet, String producer, String markup) {
        return new Stamp(title(sheet), subject(sheet), producer, digest(markup));
    }

    /** Of several documents in one file. */
    static Stamp of(String title, String producer, String content) {
        return new Stamp(title, title, producer, digest(content));
    }

    /** The title of the file, also in the head of the page. */
    static String title(Sheet sheet) {
        return SafeXml.clean(sheet.title());
    }

    static String subject(Sheet sheet) {
        String code = sheet.code().isEmpty() ? "" : " (" + sheet.code() + ")";
        return SafeXml.clean(sheet.kindName() + code + ", " + sheet.version());
    }

    void put(PDDocument document) throws IOException {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.setTimeInMillis(Instant.parse(DATE).toEpochMilli());
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setSubject(subject);
        information.setProducer(producer);
        information.setCreationDate(date);
        information.setModificationDate(date);
        document.setDocumentInformation(information);
        document.setDocumentId(identity);
        PDMetadata metadata = new PDMetadata(document, new ByteArrayInputStream(packet().getBytes(StandardCharsets.UTF_8)));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    /**
     * Written here, since the layout engine's own packet takes the clock's time and changes with the XML library that is at
     * hand.
     */
    private String packet() {
        return Packed.text("print/packet.xml").replace("@title@", xml(title)).replace("@subject@", xml(subject))
                .replace("@producer@", xml(producer)).replace("@date@", DATE);
    }

    private static String xml(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static long digest(String markup) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(markup.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(digest).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
