package tarewright.print;

import com.openhtmltopdf.extend.FSStream;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.Reader;
import java.util.Base64;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import tarewright.text.Digest;

/** The photographs of one sheet, by names that follow from their dots: a page names them, and the layout engine gets at them and at nothing else. */
final class Photographs {
    static final String PROTOCOL = "photograph";
    static final String NAMES = PROTOCOL + ":";

    private final Map<String, String> byName = new HashMap<>();

    void clear() {
        byName.clear();
    }

    /** @return the name behind {@link #NAMES} */
    String add(String png) {
        String name = HexFormat.of().formatHex(Digest.of(png));
        byName.put(NAMES + name, png);
        return name;
    }

    boolean has(String address) {
        return address != null && byName.containsKey(address);
    }

    FSStream stream(String address) {
        return has(address) ? new Bytes(Base64.getDecoder().decode(byName.get(address))) : new Nothing.Empty();
    }

    private static final class Bytes implements FSStream {
        private final byte[] bytes;

        Bytes(byte[] bytes) {
            this.bytes = bytes;
        }

        @Override
        public InputStream getStream() {
            return new ByteArrayInputStream(bytes);
        }

        @Override
        public Reader getReader() {
            return Reader.nullReader();
        }
    }
}
