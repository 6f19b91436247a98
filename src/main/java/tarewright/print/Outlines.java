package tarewright.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The outlines of letters of our own typefaces: text in a drawing would be allowed neither by {@link SafeSvg} nor without a face in the file. Each face is read when it is first used. */
final class Outlines {
    private final Map<String, Face> faces = new HashMap<>();

    /**
     * A letter at the origin.
     *
     * @param outline for a size of 1, y downwards
     * @param advance to the next letter, for a size of 1
     */
    record Letter(Path2D outline, double advance) {
    }

    /** Empty where no face has it. */
    Optional<Letter> letter(int character, boolean bold, boolean italic) {
        String style = bold && italic ? "BoldItalic" : bold ? "Bold" : italic ? "Italic" : "Regular";
        for (String name : List.of("SourceSans3-" + style, bold ? "DejaVuSans-Bold" : "DejaVuSans")) {
            Optional<Letter> letter = faces.computeIfAbsent(name, Face::new).letter(character);
            if (letter.isPresent()) {
                return letter;
            }
        }
        return Optional.empty();
    }

    private static final class Face {
        private final TrueTypeFont parsed;
        private final CmapLookup glyphs;

        Face(String file) {
            try {
                parsed = new TTFParser().parse(new RandomAccessReadBuffer(Packed.bytes("fonts/" + file + ".ttf")));
                glyphs = parsed.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        Optional<Letter> letter(int character) {
            int glyph = glyphs.getGlyphId(character);
            if (glyph == 0) {
                return Optional.empty();
            }
            try {
                double unit = 1.0 / parsed.getUnitsPerEm();
                GlyphData data = parsed.getGlyph().getGlyph(glyph);
                Path2D outline = new Path2D.Double();
                if (data != null) {
                    outline.append(data.getPath().getPathIterator(AffineTransform.getScaleInstance(unit, -unit)), false);
                }
                return Optional.of(new Letter(outline, parsed.getAdvanceWidth(glyph) * unit));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
