package tarewright.print;

import java.util.List;
import org.apache.poi.xwpf.usermodel.UnderlinePatterns;
import org.apache.poi.xwpf.usermodel.VerticalAlign;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import tarewright.document.Text;

/** Text as runs of a paragraph of an editable copy. */
final class EditableText {
    private static final int WIDEST_BLANK = 40;

    /** How a run is dressed. */
    private record Dress(boolean bold, boolean italic, boolean struck, boolean typed) {
        static final Dress PLAIN = new Dress(false, false, false, false);

        Dress inBold() {
            return new Dress(true, italic, struck, typed);
        }

        Dress inItalic() {
            return new Dress(bold, true, struck, typed);
        }
    }

    private final XWPFParagraph paragraph;

    EditableText(XWPFParagraph paragraph) {
        this.paragraph = paragraph;
    }

    /** Appends the texts. */
    EditableText add(List<Text> texts) {
        add(texts, Dress.PLAIN);
        return this;
    }

    /** Appends the texts in bold. */
    EditableText bold(List<Text> texts) {
        add(texts, Dress.PLAIN.inBold());
        return this;
    }

    private void add(List<Text> texts, Dress dress) {
        texts.forEach(text -> add(text, dress));
    }

    private void add(Text text, Dress dress) {
        if (text instanceof Text.Words t) {
            run(t.text(), dress);
        } else if (text instanceof Text.Strong t) {
            add(t.inside(), dress.inBold());
        } else if (text instanceof Text.Emphasis t) {
            add(t.inside(), dress.inItalic());
        } else if (text instanceof Text.Code t) {
            run(t.text(), new Dress(dress.bold(), dress.italic(), dress.struck(), true));
        } else if (text instanceof Text.Symbol t) {
            run(t.letter(), dress.inItalic());
        } else if (text instanceof Text.Subscript t) {
            run(t.text(), dress).setSubscript(VerticalAlign.SUBSCRIPT);
        } else if (text instanceof Text.Superscript t) {
            run(t.text(), dress).setSubscript(VerticalAlign.SUPERSCRIPT);
        } else if (text instanceof Text.Chemical t) {
            add(t.pieces(), dress);
        } else if (text instanceof Text.Quantity t) {
            run(t.shown(), dress.inBold());
        } else if (text instanceof Text.Blank t) {
            run("\u00A0".repeat(2 * Math.max(2, Math.min(t.width(), WIDEST_BLANK))), dress).setUnderline(UnderlinePatterns.SINGLE);
        } else if (text instanceof Text.Filled t) {
            run(t.shown(), dress.inBold().inItalic());
        } else if (text instanceof Text.Arrow t) {
            if (!t.over().isEmpty()) {
                run(PlainText.bare(t.over()), dress).setSubscript(VerticalAlign.SUPERSCRIPT);
            }
            run(t.sign(), dress);
        } else if (text instanceof Text.Fraction t) {
            run("(", dress);
            add(t.above(), dress);
            run(") / (", dress);
            add(t.below(), dress);
            run(")", dress);
        } else if (text instanceof Text.Struck t) {
            add(t.inside(), new Dress(dress.bold(), dress.italic(), true, dress.typed()));
        } else if (text instanceof Text.Break) {
            paragraph.createRun().addBreak();
        } else {
            throw new IllegalStateException("a text without an editable form: " + text.getClass());
        }
    }

    private XWPFRun run(String words, Dress dress) {
        XWPFRun run = paragraph.createRun();
        run.setText(SafeXml.clean(words));
        if (dress.bold()) {
            run.setBold(true);
        }
        if (dress.italic()) {
            run.setItalic(true);
        }
        if (dress.struck()) {
            run.setStrikeThrough(true);
        }
        if (dress.typed()) {
            run.setFontFamily("Courier New");
        }
        return run;
    }
}
