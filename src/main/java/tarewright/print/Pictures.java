package tarewright.print;

import freemarker.core.TemplateMarkupOutputModel;
import freemarker.core.XHTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import tarewright.document.Piece;
import tarewright.wording.TableWords;

/**
 * Drawings as markup for a template, each with the words that stand in for it: the packed pictograms and signs, and those of a
 * sheet.
 */
final class Pictures {
    private final Map<String, SafeSvg> packed = new HashMap<>();
    private final Medium medium;
    private final Photographs photographs = new Photographs();

    Pictures(Medium medium) {
        this.medium = medium;
    }

    /** A GHS pictogram by its code. Its stand-in is the code and the symbol's name; one that the language lacks is English and marked as that. */
    Map<String, Object> pictogram(String code, TableWords words) {
        String clean = SafeXml.clean(code);
        SafeSvg picture = Packed.has(path(code)) ? packed(code) : packed("GHS00");
        String spoken = clean + ": " + words.phrase(picture.title());
        return Map.of("code", clean, "picture", markup(picture.markup("pictogram", "", spoken, words.isOther(picture.title()) ? "" : "en", medium)));
    }

    /** An ISO 7010 sign by its code, or the general sign of its kind where we have not drawn it. */
    TemplateMarkupOutputModel<?> sign(String code, String words) {
        String file = Packed.has(path(code)) ? code : general(code);
        return markup(packed(file).markup("sign", "", words, "", medium));
    }

    /** The triangle of a caution, black and white so that a grey copy keeps it. */
    TemplateMarkupOutputModel<?> alert(String word) {
        return markup(packed("ALERT").markup("alert", "", word, "", medium));
    }

    TemplateMarkupOutputModel<?> drawing(Piece.Drawing drawing) {
        String size = String.format(Locale.ROOT, "width:%.2fmm;height:%.2fmm", drawing.widthMillimetres(),
                drawing.heightMillimetres());
        return markup(SafeSvg.of(drawing.svg()).markup("drawing", size, SafeXml.clean(drawing.spoken()), "", medium));
    }

    /** On paper by a name that {@link Nothing} lets through to its bytes; for a browser with the bytes themselves. */
    TemplateMarkupOutputModel<?> photograph(Piece.Photograph photograph) {
        String source = medium == Medium.WEB ? "data:image/png;base64," + photograph.png() : Photographs.NAMES + photographs.add(photograph.png());
        String size = String.format(Locale.ROOT, "width:%.2fmm;height:%.2fmm", photograph.widthMillimetres(), photograph.heightMillimetres());
        return markup("<img class=\"photograph\" style=\"" + size + "\" alt=\"" + SafeSvg.escaped(spoken(photograph.spoken())) + "\" src=\"" + source + "\"/>");
    }

    /** The photographs of the sheet that was last made into markup. */
    Photographs photographs() {
        return photographs;
    }

    private static String spoken(String words) {
        return words.isBlank() ? SafeSvg.NAMELESS : SafeXml.clean(words);
    }

    private SafeSvg packed(String code) {
        return packed.computeIfAbsent(code, c -> SafeSvg.of(Packed.text(path(c))));
    }

    /** The general sign of each kind: mandatory, warning, prohibition, safe condition, fire equipment. */
    private static String general(String code) {
        return switch (code.isEmpty() ? ' ' : code.charAt(0)) {
            case 'W' -> "W001";
            case 'P' -> "P001";
            case 'E' -> "E000";
            case 'F' -> "F000";
            default -> "M001";
        };
    }

    private static String path(String code) {
        boolean plain = code.chars().allMatch(c -> (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'));
        return "pictograms/" + (plain ? code.toLowerCase(Locale.ROOT) : "none") + ".svg";
    }

    private static TemplateMarkupOutputModel<?> markup(String markup) {
        try {
            return XHTMLOutputFormat.INSTANCE.fromMarkup(markup);
        } catch (TemplateModelException e) {
            throw new IllegalStateException(e);
        }
    }
}
