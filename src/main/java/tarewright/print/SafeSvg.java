package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * A vector drawing that has been read and holds shapes in flat colours only: no script, no link, no picture from elsewhere, no
 * text, no opacity and no gradient (PDF/A refuses both). It is written anew from what was read, so nothing else can come along.
 */
final class SafeSvg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    /** A drawing without an alternative fails PDF/UA, so it is at least said to be one. */
    static final String NAMELESS = "drawing";
    private static final Set<String> SHAPES = Set.of("g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
    private static final Set<String> ATTRIBUTES = new TreeSet<>(List.of("d", "x", "y", "x1", "y1", "x2", "y2", "width", "height",
            "cx", "cy", "r", "rx", "ry", "points", "transform", "fill", "fill-rule", "stroke", "stroke-width", "stroke-linecap",
            "stroke-linejoin", "stroke-dasharray", "stroke-dashoffset", "stroke-miterlimit"));

    private final String viewBox;
    private final String title;
    private final String shapes;

    private SafeSvg(String viewBox, String title, String shapes) {
        this.viewBox = viewBox;
        this.title = title;
        this.shapes = shapes;
    }

    /**
     * Reads a drawing.
     *
     * @throws IllegalArgumentException if it holds anything but shapes and a title: drawings are made by the program, never by
     * an author
     */
    static SafeSvg of(String svg) {
        Element root;
        try {
            root = new SafeXml().read(svg).getDocumentElement();
        } catch (SAXException e) {
            throw new IllegalArgumentException("a drawing that is not XML", e);
        }
        String viewBox = root.getAttribute("viewBox");
        if (!"svg".equals(root.getLocalName()) || !NAMESPACE.equals(root.getNamespaceURI()) || !viewBox.matches("[-0-9. ]+")) {
            throw new IllegalArgumentException("a drawing needs the root svg with a viewBox");
        }
        StringBuilder shapes = new StringBuilder();
        String title = "";
        for (Node node : children(root)) {
            if (node instanceof Element child && "title".equals(child.getLocalName())) {
                title = child.getTextContent().strip();
            } else {
                write(node, shapes);
            }
        }
        return new SafeSvg(viewBox, title, shapes.toString());
    }

    /** The words of the drawing's own title, often empty. */
    String title() {
        return title;
    }

    /**
     * The drawing as an element of a page.
     *
     * @param size a CSS width and height, or empty where the style sheet gives them for the class
     * @param spoken its text alternative
     * @param language of that alternative, or empty for the page's own
     * @param medium decides how the alternative is written
     */
    String markup(String cssClass, String size, String spoken, String language, Medium medium) {
        StringBuilder out = new StringBuilder("<svg xmlns=\"" + NAMESPACE + "\"");
        attribute(out, "class", cssClass);
        attribute(out, "viewBox", viewBox);
        if (medium == Medium.WEB) {
            attribute(out, "role", "img");
        }
        attribute(out, medium == Medium.WEB ? "aria-label" : "alt", spoken.isBlank() ? NAMELESS : spoken);
        if (!size.isEmpty()) {
            attribute(out, "style", size);
        }
        if (!language.isEmpty()) {
            attribute(out, "lang", language);
        }
        return out.append('>').append(shapes).append("</svg>").toString();
    }

    private static void write(Node node, StringBuilder out) {
        if (!(node instanceof Element shape)) {
            if (node.getNodeType() == Node.TEXT_NODE && !node.getTextContent().isBlank()) {
                throw new IllegalArgumentException("a drawing holds no text");
            }
            return;
        }
        if (!SHAPES.contains(shape.getLocalName()) || !NAMESPACE.equals(shape.getNamespaceURI())) {
            throw new IllegalArgumentException("a drawing holds shapes only, not " + shape.getNodeName());
        }
        out.append('<').append(shape.getLocalName());
        NamedNodeMap attributes = shape.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            String value = attribute.getNodeValue();
            if (!ATTRIBUTES.contains(attribute.getNodeName()) || value.contains("url")) {
                throw new IllegalArgumentException("not in a drawing: " + attribute.getNodeName());
            }
            attribute(out, attribute.getNodeName(), value);
        }
        out.append('>');
        for (Node child : children(shape)) {
            write(child, out);
        }
        out.append("</").append(shape.getLocalName()).append('>');
    }

    private static List<Node> children(Node parent) {
        List<Node> children = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            children.add(child);
        }
        return children;
    }

    private static void attribute(StringBuilder out, String name, String value) {
        out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
    }

    static String escaped(String value) {
        return value.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
