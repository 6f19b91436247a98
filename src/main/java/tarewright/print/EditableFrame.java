package tarewright.print;

import java.math.BigInteger;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTStyles;
import tarewright.document.Sheet;

/** What an editable copy has around its pieces: styles, numbering, paper, first lines, footer. */
final class EditableFrame {
    /** The list of bullets; every list of steps gets a number of its own over {@link #STEPS}. */
    static final BigInteger BULLETS = BigInteger.ONE;
    /** The shape of numbered steps. The library counts shapes from 0 in the order in which they are added. */
    static final BigInteger STEPS = BigInteger.ONE;
    private static final String W = " xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"";
    private static final double TWIPS = 1440 / 25.4;

    private final XWPFDocument document;

    EditableFrame(XWPFDocument document) {
        this.document = document;
    }

    void frame(Sheet sheet) {
        try {
            document.createStyles().setStyles(CTStyles.Factory.parse(styles(sheet.language())));
            XWPFNumbering numbering = document.createNumbering();
            numbering.addAbstractNum(new XWPFAbstractNum(CTAbstractNum.Factory.parse(numbers("0", "bullet", "•", 360))));
            numbering.addAbstractNum(new XWPFAbstractNum(CTAbstractNum.Factory.parse(numbers("1", "decimal", "%1  ☐", 720))));
            numbering.addNum(BigInteger.ZERO);
        } catch (XmlException e) {
            throw new IllegalStateException(e);
        }
        paper(sheet.paper());
        top(document, sheet);
        footer(sheet);
    }

    /** The first lines of a sheet. */
    static void top(XWPFDocument document, Sheet sheet) {
        XWPFParagraph kind = document.createParagraph();
        kind.createRun().setText(SafeXml.clean((sheet.kindName() + " " + sheet.code()).strip()));
        XWPFParagraph title = document.createParagraph();
        title.setStyle("Title");
        title.createRun().setText(SafeXml.clean(sheet.title()));
    }

    private void paper(Sheet.Paper paper) {
        CTSectPr section = document.getDocument().getBody().addNewSectPr();
        boolean letter = paper == Sheet.Paper.LETTER;
        section.addNewPgSz().setW(BigInteger.valueOf(letter ? 12240 : 11906));
        section.getPgSz().setH(BigInteger.valueOf(letter ? 15840 : 16838));
        CTPageMar margins = section.addNewPgMar();
        margins.setTop(twips(15));
        margins.setBottom(twips(18));
        margins.setLeft(twips(23));
        margins.setRight(twips(18));
        margins.setFooter(twips(8));
        margins.setHeader(twips(8));
        margins.setGutter(BigInteger.ZERO);
    }

    private static BigInteger twips(double millimetres) {
        return BigInteger.valueOf(Math.round(millimetres * TWIPS));
    }

    private void footer(Sheet sheet) {
        XWPFParagraph foot = document.createFooter(HeaderFooterType.DEFAULT).createParagraph();
        StringBuilder words = new StringBuilder();
        for (String part : new String[] {sheet.code(), sheet.title(), sheet.kindName(), sheet.version(), sheet.footer()}) {
            words.append(part.isEmpty() ? "" : part + " · ");
        }
        foot.createRun().setText(SafeXml.clean(words + sheet.pageWord().page() + " "));
        foot.getCTP().addNewFldSimple().setInstr("PAGE");
        foot.createRun().setText(" " + SafeXml.clean(sheet.pageWord().of()) + " ");
        foot.getCTP().addNewFldSimple().setInstr("NUMPAGES");
    }

    private static String numbers(String id, String format, String text, int hanging) {
        return "<xml-fragment" + W + " w:abstractNumId=\"" + id + "\"><w:multiLevelType w:val=\"singleLevel\"/><w:lvl w:ilvl=\"0\"><w:start w:val=\"1\"/>"
                + "<w:numFmt w:val=\"" + format + "\"/><w:lvlText w:val=\"" + text + "\"/><w:lvlJc w:val=\"left\"/><w:pPr><w:ind w:left=\"" + hanging
                + "\" w:hanging=\"" + hanging + "\"/></w:pPr></w:lvl></xml-fragment>";
    }

    private static String styles(String language) {
        StringBuilder styles = new StringBuilder("<xml-fragment" + W + "><w:docDefaults><w:rPrDefault><w:rPr>"
                + "<w:rFonts w:ascii=\"Calibri\" w:hAnsi=\"Calibri\" w:cs=\"Calibri\"/><w:sz w:val=\"24\"/><w:lang w:val=\"" + language.replaceAll("[^A-Za-z0-9-]", "")
                + "\"/></w:rPr></w:rPrDefault><w:pPrDefault><w:pPr><w:spacing w:after=\"100\"/></w:pPr></w:pPrDefault></w:docDefaults>"
                + "<w:style w:type=\"paragraph\" w:default=\"1\" w:styleId=\"Normal\"><w:name w:val=\"Normal\"/></w:style>");
        styles.append(style("Title", "Title", 42, 0));
        styles.append(style("Heading1", "heading 1", 32, 1));
        styles.append(style("Heading2", "heading 2", 29, 2));
        styles.append(style("Heading3", "heading 3", 25, 3));
        return styles.append("</xml-fragment>").toString();
    }

    private static String style(String id, String name, int halfPoints, int level) {
        return "<w:style w:type=\"paragraph\" w:styleId=\"" + id + "\"><w:name w:val=\"" + name + "\"/><w:basedOn w:val=\"Normal\"/><w:pPr><w:keepNext/>"
                + "<w:spacing w:before=\"" + (level == 0 ? 0 : 240) + "\" w:after=\"80\"/>"
                + (level == 0 ? "" : "<w:outlineLvl w:val=\"" + (level - 1) + "\"/>") + "</w:pPr><w:rPr><w:b/><w:sz w:val=\"" + halfPoints
                + "\"/></w:rPr></w:style>";
    }
}
