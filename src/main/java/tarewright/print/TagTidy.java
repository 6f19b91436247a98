package tarewright.print;

import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Puts the tag tree in order once it is made: tags that hold nothing go (the foot of every table, the end of a line), and
 * within a line of text a part is a Span, though the layout engine calls the halves of a fraction Div.
 */
final class TagTidy {
    private static final COSName KIDS = COSName.K;
    private static final COSName SPAN = COSName.getPDFName("Span");
    private static final Set<String> IDLE = Set.of("THead", "TBody", "TFoot", "Div", "Span", "P");
    private static final Set<String> LINES = Set.of("P", "Span", "H1", "H2", "H3", "H4", "Lbl");

    private TagTidy() {
    }

    static void tidy(PDDocument document) {
        tidy(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), false);
    }

    private static void tidy(COSDictionary parent, boolean inLine) {
        COSBase kids = parent.getDictionaryObject(KIDS);
        if (kids instanceof COSDictionary only) {
            kid(only, inLine);
            if (empty(only)) {
                parent.removeItem(KIDS);
            }
        } else if (kids instanceof COSArray many) {
            COSArray kept = new COSArray();
            for (int i = 0; i < many.size(); i++) {
                COSBase kid = many.get(i);
                if (!(resolved(kid) instanceof COSDictionary element)) {
                    kept.add(kid);
                    continue;
                }
                kid(element, inLine);
                if (!empty(element)) {
                    kept.add(kid);
                }
            }
            parent.setItem(KIDS, kept);
        }
    }

    private static void kid(COSDictionary element, boolean inLine) {
        String tag = element.getNameAsString(COSName.S, "");
        if (inLine && tag.equals("Div")) {
            element.setItem(COSName.S, SPAN);
        }
        tidy(element, inLine || LINES.contains(tag));
    }

    /** A tag without kids that nobody would miss; an empty cell keeps its place, and references to content are no tags. */
    private static boolean empty(COSDictionary element) {
        if (!IDLE.contains(element.getNameAsString(COSName.S, ""))) {
            return false;
        }
        COSBase kids = element.getDictionaryObject(KIDS);
        return kids == null || kids instanceof COSArray many && many.size() == 0;
    }

    private static COSBase resolved(COSBase kid) {
        return kid instanceof COSObject reference ? reference.getObject() : kid;
    }
}
