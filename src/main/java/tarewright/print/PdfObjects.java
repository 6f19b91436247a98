package tarewright.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSWriter;

/**
 * Writes a PDF file one object at a time (ISO 32000-1, 7.5: object streams and a cross-reference stream), so that of a large
 * file no more is held than its bytes and where each object begins. Streams go over as they are, deflated once where they came
 * from.
 */
final class PdfObjects {
    private static final int OUR_GENERATION = 1;
    private static final int STREAM_BYTES = 1 << 16;
    private static final int STREAM_OBJECTS = 1000;
    private static final int OFFSET_BYTES = 4;
    private static final int INDEX_BYTES = 2;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
    /** Of each object by its number: 1 and where it begins, or 2 and the object stream with its place in it. */
    private final List<long[]> places = new ArrayList<>();
    private final ByteArrayOutputStream packed = new ByteArrayOutputStream(STREAM_BYTES + 4096);
    private final StringBuilder heads = new StringBuilder();
    private final List<Integer> waiting = new ArrayList<>();

    PdfObjects() {
        ascii(out, "%PDF-1.7\n%");
        out.writeBytes(new byte[] {(byte) 0xe2, (byte) 0xe3, (byte) 0xcf, (byte) 0xd3, '\n'});
        places.add(new long[] {0, 0, 0xffff});
    }

    /** The first of so many new numbers in a row. */
    int numbers(int count) {
        int first = places.size();
        for (int i = 0; i < count; i++) {
            places.add(new long[0]);
        }
        return first;
    }

    /**
     * What stands for the object of that number in another; told from the references of a file that was read by its generation,
     * which those never have.
     */
    static COSObject reference(int number) {
        return new COSObject(COSNull.NULL, new COSObjectKey(number, OUR_GENERATION));
    }

    static boolean isOurs(COSObject reference) {
        return reference.getKey().getGeneration() == OUR_GENERATION;
    }

    /** The numbers of references that {@link #reference} made. */
    static int ours(COSObject reference) {
        return Math.toIntExact(reference.getKey().getNumber());
    }

    /** @param numbers of what it refers to */
    void object(int number, COSBase value, ToIntFunction<COSObject> numbers) throws IOException {
        heads.append(number).append(' ').append(packed.size()).append(' ');
        write(packed, value, numbers);
        packed.write('\n');
        waiting.add(number);
        if (packed.size() >= STREAM_BYTES || waiting.size() == STREAM_OBJECTS) {
            pack();
        }
    }

    /** A stream, its bytes as they are. */
    void stream(int number, COSStream stream, ToIntFunction<COSObject> numbers) throws IOException {
        byte[] bytes;
        try (InputStream raw = stream.createRawInputStream()) {
            bytes = raw.readAllBytes();
        }
        COSDictionary head = new COSDictionary(stream);
        stream(number, head, bytes, numbers);
    }

    private void stream(int number, COSDictionary head, byte[] bytes, ToIntFunction<COSObject> numbers) throws IOException {
        head.setInt(COSName.LENGTH, bytes.length);
        places.set(number, new long[] {1, out.size(), 0});
        ascii(out, number + " 0 obj\n");
        write(out, head, numbers);
        ascii(out, "\nstream\n");
        out.writeBytes(bytes);
        ascii(out, "\nendstream\nendobj\n");
    }

    private void pack() throws IOException {
        if (waiting.isEmpty()) {
            return;
        }
        int number = numbers(1);
        for (int i = 0; i < waiting.size(); i++) {
            places.set(waiting.get(i), new long[] {2, number, i});
        }
        COSDictionary head = new COSDictionary();
        head.setItem(COSName.TYPE, COSName.OBJ_STM);
        head.setInt(COSName.N, waiting.size());
        head.setInt(COSName.FIRST, heads.length());
        head.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        byte[] index = heads.toString().getBytes(StandardCharsets.US_ASCII);
        stream(number, head, deflated(index, packed.toByteArray()), PdfObjects::ours);
        waiting.clear();
        heads.setLength(0);
        packed.reset();
    }

    /** The whole file. @param id 16 bytes that tell it from others */
    byte[] end(int catalogue, COSDictionary information, byte[] id) throws IOException {
        int info = numbers(1);
        object(info, information, PdfObjects::ours);
        pack();
        int number = numbers(1);
        long begin = out.size();
        places.set(number, new long[] {1, begin, 0});
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        for (long[] place : places) {
            table.write((int) place[0]);
            bytes(table, place[1], OFFSET_BYTES);
            bytes(table, place[2], INDEX_BYTES);
        }
        COSDictionary head = new COSDictionary();
        head.setItem(COSName.TYPE, COSName.XREF);
        head.setInt(COSName.SIZE, places.size());
        COSArray widths = new COSArray();
        List.of(1, OFFSET_BYTES, INDEX_BYTES).forEach(w -> widths.add(COSInteger.get(w)));
        head.setItem(COSName.W, widths);
        head.setItem(COSName.ROOT, reference(catalogue));
        head.setItem(COSName.INFO, reference(info));
        COSArray ids = new COSArray();
        ids.add(new COSString(id));
        ids.add(new COSString(id));
        head.setItem(COSName.ID, ids);
        head.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        stream(number, head, deflated(table.toByteArray()), PdfObjects::ours);
        ascii(out, "startxref\n" + begin + "\n%%EOF\n");
        return out.toByteArray();
    }

    private static void bytes(OutputStream to, long value, int count) throws IOException {
        for (int i = count - 1; i >= 0; i--) {
            to.write((int) (value >>> 8 * i));
        }
    }

    private static byte[] deflated(byte[]... parts) throws IOException {
        ByteArrayOutputStream to = new ByteArrayOutputStream(STREAM_BYTES);
        Deflater deflater = new Deflater();
        try (DeflaterOutputStream deflating = new DeflaterOutputStream(to, deflater)) {
            for (byte[] part : parts) {
                deflating.write(part);
            }
        } finally {
            deflater.end();
        }
        return to.toByteArray();
    }

    private static void ascii(ByteArrayOutputStream to, String text) {
        to.writeBytes(text.getBytes(StandardCharsets.US_ASCII));
    }

    private static void write(ByteArrayOutputStream to, COSBase value, ToIntFunction<COSObject> numbers) throws IOException {
        if (value instanceof COSObject reference) {
            ascii(to, numbers.applyAsInt(reference) + " 0 R");
        } else if (value instanceof COSDictionary dictionary) {
            ascii(to, "<<");
            for (Map.Entry<COSName, COSBase> each : dictionary.entrySet()) {
                each.getKey().writePDF(to);
                to.write(' ');
                write(to, each.getValue(), numbers);
            }
            ascii(to, ">>");
        } else if (value instanceof COSArray array) {
            to.write('[');
            for (int i = 0; i < array.size(); i++) {
                if (i > 0) {
                    to.write(' ');
                }
                write(to, array.get(i), numbers);
            }
            to.write(']');
        } else if (value instanceof COSName name) {
            name.writePDF(to);
        } else if (value instanceof COSString string) {
            COSWriter.writeString(string, to);
        } else if (value instanceof COSInteger integer) {
            integer.writePDF(to);
        } else if (value instanceof COSFloat number) {
            number.writePDF(to);
        } else if (value instanceof COSBoolean truth) {
            truth.writePDF(to);
        } else {
            ascii(to, "null");
        }
    }
}
