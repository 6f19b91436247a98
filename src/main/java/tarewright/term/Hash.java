package tarewright.term;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import tarewright.text.Digest;

/** SHA-256 (FIPS 180-4) in hexadecimal. */
public final class Hash {
    private Hash() {
    }

    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    public static String of(String text) {
        return HexFormat.of().formatHex(Digest.of(text));
    }
}
