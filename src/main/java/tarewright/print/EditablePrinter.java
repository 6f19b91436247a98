package tarewright.print;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import tarewright.document.Sheet;

/**
 * An editable copy of a handout (ISO/IEC 29500, {@code .docx}), for whoever must change a sentence. It is a copy: what is changed in it is not checked,
 * and no number in it works itself out again. The same sheet gives the same bytes.
 */
public final class EditablePrinter {
    /** Near the earliest that a zip file can say; the very first day would be written with the machine's time zone. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    /** @throws IllegalArgumentException if the sheet is not a handout */
    public byte[] print(Sheet sheet) {
        if (sheet.kind() != Sheet.Kind.HANDOUT) {
            throw new IllegalArgumentException("only a handout has an editable copy");
        }
        try (XWPFDocument document = new XWPFDocument()) {
            new EditableFrame(document).frame(sheet);
            new EditablePieces(document, sheet).add(sheet.pieces());
            POIXMLProperties.CoreProperties core = document.getProperties().getCoreProperties();
            core.setTitle(SafeXml.clean(sheet.title()));
            core.setSubjectProperty(SafeXml.clean(sheet.kindName()));
            core.setCreated(Optional.of(new Date(0)));
            core.setModified(Optional.of(new Date(0)));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.write(out);
            return timeless(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] timeless(byte[] zip) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream(zip.length);
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(zip)); ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(NO_TIME);
                to.putNextEntry(same);
                from.transferTo(to);
                to.closeEntry();
            }
        }
        return out.toByteArray();
    }
}
