package tarewright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** The tag tree of a file as indented text: what a screen reader is told, with the words that belong to each tag. */
final class TagTree {
    private final Map<COSDictionary, Map<Integer, String>> words = new HashMap<>();
    private final StringBuilder out = new StringBuilder();

    private TagTree() {
    }

    static String of(Printed printed) {
        try (PDDocument document = Pdf.open(printed)) {
            TagTree tree = new TagTree();
            for (PDPage page : document.getPages()) {
                tree.read(page);
            }
            tree.write(document.getDocumentCatalog().getStructureTreeRoot(), 0);
            return tree.out.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        Map<Integer, String> onPage = new HashMap<>();
        extractor.getMarkedContents().forEach(content -> onPage.put(content.getMCID(), text(content)));
        words.put(page.getCOSObject(), onPage);
    }

    private static String text(PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition position) {
                text.append(position.getUnicode());
            }
        }
        return Pdf.plain(text.toString());
    }

    private void write(PDStructureNode node, int depth) {
        StringBuilder line = new StringBuilder();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element && !element.getStructureType().equals("Span")) {
                flush(line, depth);
                out.append("  ".repeat(depth)).append(element.getStructureType()).append(attributes(element)).append('\n');
                write(element, depth + 1);
            } else {
                line.append(inLine(node, kid));
            }
        }
        flush(line, depth);
    }

    private void flush(StringBuilder line, int depth) {
        String text = line.toString().replaceAll(" +", " ").strip();
        if (!text.isEmpty()) {
            out.append("  ".repeat(depth)).append(text).append('\n');
        }
        line.setLength(0);
    }

    /** A part of a line; where it has a stand-in, in angle brackets with that. */
    private String inLine(PDStructureNode node, Object kid) {
        if (kid instanceof PDStructureElement element) {
            StringBuilder text = new StringBuilder();
            for (Object inside : element.getKids()) {
                text.append(inLine(element, inside));
            }
            String attributes = attributes(element);
            boolean figure = element.getStructureType().equals("Figure");
            return attributes.isEmpty() ? text.toString() : "<" + (figure ? "Figure" : text.toString().strip()) + attributes
                    + ">";
        }
        int id = kid instanceof Integer number ? number : ((PDMarkedContentReference) kid).getMCID();
        PDPage page = kid instanceof PDMarkedContentReference reference ? reference.getPage()
                : ((PDStructureElement) node).getPage();
        String text = words.get(page.getCOSObject()).getOrDefault(id, "");
        return text.isEmpty() ? " " : text;
    }

    private static String attributes(PDStructureElement element) {
        StringBuilder out = new StringBuilder();
        add(out, "alt", element.getAlternateDescription());
        add(out, "says", element.getExpandedForm());
        add(out, "lang", element.getLanguage());
        if (element.getCOSObject().getDictionaryObject(COSName.A) instanceof COSDictionary dictionary) {
            for (String name : List.of("Scope", "ListNumbering", "ColSpan", "RowSpan")) {
                add(out, name.toLowerCase(java.util.Locale.ROOT), dictionary.getNameAsString(name));
            }
        }
        return out.toString();
    }

    private static void add(StringBuilder out, String name, String value) {
        if (value != null && !value.isEmpty()) {
            out.append(' ').append(name).append("=[").append(value).append(']');
        }
    }
}
