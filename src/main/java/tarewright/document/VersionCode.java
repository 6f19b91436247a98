package tarewright.document;

import java.math.BigInteger;
import java.util.stream.Collectors;
import tarewright.derivation.Figure;
import tarewright.setting.DayValue;
import tarewright.setting.Room;
import tarewright.setting.Setting;
import tarewright.text.Digest;

/** A short code on every page: two sheets with the same code were printed from the same text, setting and data. */
public final class VersionCode {
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz234567";
    private static final int LENGTH = 7;
    private static final int BITS = 5;

    private VersionCode() {
    }

    /**
     * Seven letters and digits (RFC 4648 base 32, small letters) of a SHA-256.
     *
     * @param source text of the procedure, line ends counted as one sort
     * @param dataVersion what tells one state of the tables from another
     */
    public static String of(String source, Setting setting, String dataVersion) {
        String all = String.join("\u0000", source.replace("\r\n", "\n").replace('\r', '\n'), canonical(setting), dataVersion);
        return base32(Digest.of(all), LENGTH);
    }

    /** A number that follows from a code, to draw by. */
    public static long seed(String version) {
        return new BigInteger(Digest.of(version)).longValue();
    }

    /** The first {@code length} letters, at most eight. */
    static String base32(byte[] hash, int length) {
        long bits = 0;
        for (int i = 0; i < BITS; i++) {
            bits = bits << 8 | hash[i] & 0xff;
        }
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < length; i++) {
            code.append(LETTERS.charAt((int) (bits >> 8 * BITS - BITS * (i + 1) & 31)));
        }
        return code.toString();
    }

    private static String canonical(Setting setting) {
        Room room = setting.room();
        return String.join(";", "" + setting.groups(), "" + setting.groupSize(), "" + setting.runs(), "" + setting.spare(),
                figure(room.temperature()), figure(room.pressure()), figure(room.humidity()),
                room.volume().map(VersionCode::figure).orElse(""), setting.hood().name(),
                setting.paper().name(), setting.language(), setting.country(), setting.section(),
                setting.occasion().school(), setting.occasion().date(),
                setting.onTheDay().stream().map(DayValue::said).sorted().collect(Collectors.joining(";")), "" + setting.versions());
    }

    private static String figure(Figure figure) {
        return figure.value() + " ± " + figure.standardUncertainty() + " " + figure.unit().symbol() + " " + figure.decimals();
    }
}
