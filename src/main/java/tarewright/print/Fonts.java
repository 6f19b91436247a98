package tarewright.print;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontGroup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The typefaces, parsed once and used for one document after another on one thread.
 *
 * <p>Source Sans 3 sets the words; what it lacks (reaction arrows, boxes, rare letters) comes glyph by glyph from DejaVu Sans.
 * Ligatures stay off: one that has no letters of its own cannot be read back from the PDF file, which fails PDF/UA and PDF/A.
 */
final class Fonts {
    private static final String WORDS = "Source Sans 3";
    private static final String FALLBACK = "DejaVu Sans";
    private static final String FIXED = "DejaVu Sans Mono";

    private final List<Face> faces = List.of(
            new Face("SourceSans3-Regular", WORDS, 400, IdentValue.NORMAL),
            new Face("SourceSans3-Bold", WORDS, 700, IdentValue.NORMAL),
            new Face("SourceSans3-Italic", WORDS, 400, IdentValue.ITALIC),
            new Face("SourceSans3-BoldItalic", WORDS, 700, IdentValue.ITALIC),
            new Face("DejaVuSans", FALLBACK, 400, IdentValue.NORMAL),
            new Face("DejaVuSans-Bold", FALLBACK, 700, IdentValue.NORMAL),
            new Face("DejaVuSansMono", FIXED, 400, IdentValue.NORMAL));

    private final FSDefaultCacheStore metrics = new FSDefaultCacheStore();

    /** What is known of the faces' heights, kept from one document to the next. */
    FSDefaultCacheStore metrics() {
        return metrics;
    }

    /**
     * Makes the faces known to one run of the layout, each by its family and as a last resort for every other. A face is put
     * into the file only when a glyph of it is used, and then only its used part.
     */
    void use(PdfBoxFontResolver resolver, PDDocument document) {
        for (Face face : faces) {
            PDFontSupplier loaded = new Loaded(document, face.parsed);
            resolver.addFont(loaded, face.family, face.weight, face.style, true, FontGroup.MAIN);
            resolver.addFont(loaded, face.family, face.weight, face.style, true, FontGroup.FINAL_FALLBACK);
        }
    }

    /** The characters of a text that no face has: they would print as {@code #}. */
    SortedSet<Integer> missing(String text) {
        SortedSet<Integer> missing = new TreeSet<>();
        text.codePoints().filter(c -> !invisible(c)).distinct().filter(c -> faces.stream().noneMatch(f -> f.has(c)))
                .forEach(missing::add);
        return Collections.unmodifiableSortedSet(missing);
    }

    /** Characters that shape the line and need no glyph. */
    private static boolean invisible(int c) {
        return c == '\t' || c == '\n' || c == '\r' || Character.getType(c) == Character.FORMAT;
    }

    private static final class Face {
        private final String family;
        private final int weight;
        private final IdentValue style;
        private final TrueTypeFont parsed;
        private final CmapLookup glyphs;

        Face(String file, String family, int weight, IdentValue style) {
            this.family = family;
            this.weight = weight;
            this.style = style;
            try {
                parsed = new TTFParser().parse(new RandomAccessReadBuffer(Packed.bytes("fonts/" + file + ".ttf")));
                parsed.setEnableGsub(false);
                glyphs = parsed.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        boolean has(int character) {
            return glyphs.getGlyphId(character) != 0;
        }
    }

    private static final class Loaded extends PDFontSupplier {
        private final PDDocument document;
        private final TrueTypeFont parsed;
        private PDFont font;

        Loaded(PDDocument document, TrueTypeFont parsed) {
            super(null);
            this.document = document;
            this.parsed = parsed;
        }

        @Override
        public PDFont supply() {
            try {
                if (font == null) {
                    font = PDType0Font.load(document, parsed, true);
                }
                return font;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
