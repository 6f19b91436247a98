package tarewright.print;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/**
 * Says what the colours of a file mean. The layout engine sends the profile through the colour management of the Java runtime, which writes its own marks into the head
 * of it, other ones in each version; so the profile is put in once more, as it is.
 */
final class ColourProfile {
    private static final int COMPONENTS = 3;
    private final byte[] profile = Packed.bytes("colour/srgb.icc");

    byte[] bytes() {
        return profile.clone();
    }

    void put(PDDocument document) throws IOException {
        for (PDOutputIntent intent : document.getDocumentCatalog().getOutputIntents()) {
            PDStream stream = new PDStream(document, new ByteArrayInputStream(profile), COSName.FLATE_DECODE);
            stream.getCOSObject().setInt(COSName.N, COMPONENTS);
            intent.getCOSObject().setItem(COSName.DEST_OUTPUT_PROFILE, stream);
        }
    }
}
