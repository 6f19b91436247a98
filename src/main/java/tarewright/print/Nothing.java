package tarewright.print;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.InputStream;
import java.io.Reader;

/** Nothing is fetched while a page is laid out: no address resolves, none may be read, and none would give a byte, but for the photographs of the sheet itself. */
final class Nothing {
    private Nothing() {
    }

    static void fetched(PdfRendererBuilder builder, Photographs photographs) {
        builder.useUriResolver((base, address) -> photographs.has(address) ? address : null);
        builder.useExternalResourceAccessControl((address, type) -> photographs.has(address),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl((address, type) -> photographs.has(address),
                ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useProtocolsStreamImplementation(photographs::stream, Photographs.PROTOCOL);
        FSStreamFactory empty = address -> new Empty();
        builder.useProtocolsStreamImplementation(empty, "http", "https", "file", "jar", "data", "classpath", "ftp");
    }

    static final class Empty implements FSStream {
        @Override
        public InputStream getStream() {
            return InputStream.nullInputStream();
        }

        @Override
        public Reader getReader() {
            return Reader.nullReader();
        }
    }
}
