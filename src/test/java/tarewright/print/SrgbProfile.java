package tarewright.print;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Builds the colour profile that every file carries, so that anybody can see where its bytes come from: ICC version 2.1, display
 * class, RGB by a matrix and one tone curve.
 *
 * <p>Sources: IEC 61966-2-1 for the tone curve; the primaries and white adapted to D50 are the values of the ICC's own sRGB
 * profile
 * (from memory, held against the profile of the Java runtime by the test); ICC.1:2001-04 for the layout of the file.
 */
final class SrgbProfile {
    private static final int CURVE = 1024;

    private SrgbProfile() {
    }

    static byte[] bytes() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", description("sRGB IEC61966-2.1"));
        tags.put("cprt", text("No copyright, use freely"));
        tags.put("wtpt", xyz(0.96420, 1.00000, 0.82491));
        tags.put("rXYZ", xyz(0.43607, 0.22249, 0.01392));
        tags.put("gXYZ", xyz(0.38515, 0.71687, 0.09708));
        tags.put("bXYZ", xyz(0.14307, 0.06061, 0.71410));
        tags.put("rTRC", curve());
        return assemble(tags);
    }

    private static byte[] assemble(Map<String, byte[]> tags) {
        int entries = tags.size() + 2;
        int start = 128 + 4 + 12 * entries;
        int size = start + tags.values().stream().mapToInt(b -> b.length).sum();
        ByteBuffer out = ByteBuffer.allocate(size);
        out.putInt(size).putInt(0).putInt(0x02100000).put(ascii("mntrRGB XYZ "));
        for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
            out.putShort((short) part);
        }
        out.put(ascii("acsp")).position(68);
        out.put(fixed(0.96420)).put(fixed(1.0)).put(fixed(0.82491)).position(128);
        out.putInt(entries);
        int at = start;
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            out.put(ascii(tag.getKey())).putInt(at).putInt(tag.getValue().length);
            if (tag.getKey().equals("rTRC")) {
                out.put(ascii("gTRC")).putInt(at).putInt(tag.getValue().length);
                out.put(ascii("bTRC")).putInt(at).putInt(tag.getValue().length);
            }
            at += tag.getValue().length;
        }
        tags.values().forEach(out::put);
        return out.array();
    }

    private static byte[] curve() {
        ByteBuffer out = ByteBuffer.allocate(12 + 2 * CURVE);
        out.put(ascii("curv")).putInt(0).putInt(CURVE);
        for (int i = 0; i < CURVE; i++) {
            double v = i / (CURVE - 1.0);
            double light = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
            out.putShort((short) Math.round(light * 65535));
        }
        return out.array();
    }

    private static byte[] xyz(double x, double y, double z) {
        return ByteBuffer.allocate(20).put(ascii("XYZ ")).putInt(0).put(fixed(x)).put(fixed(y)).put(fixed(z)).array();
    }

    private static byte[] text(String text) {
        return padded(ByteBuffer.allocate(8 + text.length() + 1).put(ascii("text")).putInt(0).put(ascii(text)).array());
    }

    private static byte[] description(String text) {
        ByteBuffer out = ByteBuffer.allocate(12 + text.length() + 1 + 8 + 3 + 67);
        out.put(ascii("desc")).putInt(0).putInt(text.length() + 1).put(ascii(text));
        return padded(out.array());
    }

    private static byte[] padded(byte[] bytes) {
        return java.util.Arrays.copyOf(bytes, (bytes.length + 3) / 4 * 4);
    }

    private static byte[] fixed(double value) {
        return ByteBuffer.allocate(4).putInt((int) Math.round(value * 65536)).array();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
