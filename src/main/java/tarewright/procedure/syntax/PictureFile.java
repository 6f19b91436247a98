package tarewright.procedure.syntax;

/** A picture file that the text names, as it is to be printed: whatever else the file held (comments, titles, metadata) is gone. */
public sealed interface PictureFile {
    /** SHA-256 of the file as it lies in the folder, in hexadecimal. */
    String sha256();

    /** As printed. */
    double widthMillimetres();

    /** As printed. */
    double heightMillimetres();

    /** @param svg shapes in flat colours, no text, in whole units of its view box */
    record Shapes(String svg, double widthMillimetres, double heightMillimetres, String sha256) implements PictureFile {
    }

    /** @param png a PNG file in grey or RGB without transparency, in base 64 (RFC 4648) */
    record Dots(String png, double widthMillimetres, double heightMillimetres, String sha256) implements PictureFile {
    }
}
