package tarewright.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The text of an author's SVG file as outlines of our own letters: places, shifts, anchors and nested spans as SVG 1.1 (W3C, 2011, chapter 10) lays them out, left to
 * right, without kerning.
 */
final class SvgText {
    private static final int DEEPEST = 20;
    private static final int MOST_LETTERS = 5_000;
    private static final String LENGTH = "x y dx dy";

    private final Outlines outlines;
    private final Consumer<String> notPrinted;
    private final List<Letter> letters = new ArrayList<>();
    private final Set<Integer> missing = new TreeSet<>();
    private double smallest = Double.MAX_VALUE;

    /** One character with what moves it. */
    private static final class Letter {
        private final int character;
        private final SvgStyle style;
        private final boolean kept;
        private Optional<Double> x = Optional.empty();
        private Optional<Double> y = Optional.empty();
        private double dx;
        private double dy;

        Letter(int character, SvgStyle style, boolean kept) {
            this.character = character;
            this.style = style;
            this.kept = kept;
        }

        boolean space() {
            return character == ' ' && !kept;
        }
    }

    SvgText(Outlines outlines, Consumer<String> notPrinted) {
        this.outlines = outlines;
        this.notPrinted = notPrinted;
    }

    /** Characters that no face has. */
    Set<Integer> missing() {
        return missing;
    }

    /** The smallest font size that was met, in user units; huge where there is no text. */
    double smallest() {
        return smallest;
    }

    /** @param to takes the outline of each run of one style */
    void draw(Element text, SvgStyle style, BiConsumer<Path2D, SvgStyle> to) {
        letters.clear();
        gather(text, style, false, 0);
        collapse();
        if (!letters.isEmpty()) {
            place(to);
        }
    }

    private void gather(Element element, SvgStyle style, boolean around, int depth) {
        if (!style.shown()) {
            return;
        }
        if (depth > DEEPEST || letters.size() > MOST_LETTERS) {
            notPrinted.accept("<text>");
            return;
        }
        String space = element.getAttribute("xml:space");
        boolean kept = space.equals("preserve") || around && !space.equals("default");
        int from = letters.size();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                nested(child, style, kept, depth);
            } else if (node.getNodeType() == Node.TEXT_NODE || node.getNodeType() == Node.CDATA_SECTION_NODE) {
                if (node.getNodeValue().length() > MOST_LETTERS) {
                    notPrinted.accept("<text>");
                    return;
                }
                node.getNodeValue().codePoints().forEach(c -> letters.add(new Letter(Character.isWhitespace(c) ? ' ' : c, style, kept)));
            }
        }
        move(element, style, from);
    }

    private void nested(Element child, SvgStyle style, boolean kept, int depth) {
        if (!AuthorSvg.NAMESPACE.equals(child.getNamespaceURI()) || Set.of("title", "desc").contains(child.getLocalName())) {
            return;
        }
        if (child.getLocalName().equals("tspan")) {
            gather(child, style.of(child), kept, depth + 1);
        } else {
            notPrinted.accept("<" + child.getLocalName() + ">");
        }
    }

    /** The values of an outer element go to letters that no inner one has given a place. */
    private void move(Element element, SvgStyle style, int from) {
        for (String name : LENGTH.split(" ")) {
            String[] values = element.getAttribute(name).strip().split("[\\s,]+");
            for (int i = 0; i < values.length && !values[i].isEmpty() && from + i < letters.size(); i++) {
                Optional<Double> value = SvgLengths.length(values[i], style.size(), 100);
                if (value.isEmpty()) {
                    notPrinted.accept(name + ": " + values[i]);
                    return;
                }
                set(letters.get(from + i), name, value.get());
            }
        }
        if (element.hasAttribute("rotate") && !element.getAttribute("rotate").matches("\\s*0?\\s*")) {
            notPrinted.accept("rotate");
        }
    }

    private static void set(Letter letter, String name, double value) {
        switch (name) {
            case "x" -> letter.x = letter.x.or(() -> Optional.of(value));
            case "y" -> letter.y = letter.y.or(() -> Optional.of(value));
            case "dx" -> letter.dx = letter.dx == 0 ? value : letter.dx;
            default -> letter.dy = letter.dy == 0 ? value : letter.dy;
        }
    }

    /** A run of spaces becomes one, and none stands at either end. What moved the first of them moves what follows. */
    private void collapse() {
        List<Letter> kept = new ArrayList<>();
        Letter mover = null;
        for (Letter letter : letters) {
            boolean needless = letter.space() && (kept.isEmpty() || kept.get(kept.size() - 1).space());
            if (needless) {
                mover = mover == null && (letter.x.isPresent() || letter.y.isPresent()) ? letter : mover;
                continue;
            }
            if (mover != null) {
                Optional<Double> x = mover.x;
                Optional<Double> y = mover.y;
                letter.x = letter.x.or(() -> x);
                letter.y = letter.y.or(() -> y);
                mover = null;
            }
            kept.add(letter);
        }
        while (!kept.isEmpty() && kept.get(kept.size() - 1).space()) {
            kept.remove(kept.size() - 1);
        }
        letters.clear();
        letters.addAll(kept);
    }

    private void place(BiConsumer<Path2D, SvgStyle> to) {
        double x = 0;
        double y = 0;
        int from = 0;
        while (from < letters.size()) {
            int end = from + 1;
            while (end < letters.size() && letters.get(end).x.isEmpty() && letters.get(end).y.isEmpty()) {
                end++;
            }
            List<Letter> chunk = letters.subList(from, end);
            double before = x;
            x = chunk.get(0).x.orElse(before);
            y = chunk.get(0).y.orElse(y);
            double width = chunk.stream().mapToDouble(l -> l.dx + advance(l)).sum();
            String anchor = chunk.get(0).style.anchor();
            x -= anchor.equals("middle") ? width / 2 : anchor.equals("end") ? width : 0;
            for (Letter letter : chunk) {
                x += letter.dx;
                y += letter.dy;
                draw(letter, x, y, to);
                x += advance(letter);
            }
            from = end;
        }
    }

    private double advance(Letter letter) {
        return outlines.letter(letter.character, letter.style.bold(), letter.style.italic()).map(l -> l.advance() * letter.style.size()).orElse(0.0);
    }

    private void draw(Letter letter, double x, double y, BiConsumer<Path2D, SvgStyle> to) {
        Optional<Outlines.Letter> found = outlines.letter(letter.character, letter.style.bold(), letter.style.italic());
        byte direction = Character.getDirectionality(letter.character);
        boolean leftward = direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        if (found.isEmpty() || leftward) {
            missing.add(letter.character);
        } else if (letter.style.visible() && letter.character != ' ') {
            smallest = Math.min(smallest, letter.style.size());
            AffineTransform put = new AffineTransform(letter.style.size(), 0, 0, letter.style.size(), x, y + letter.style.lowered());
            to.accept(new Path2D.Double(found.get().outline(), put), letter.style);
        }
    }

    /** Characters as a message shows them. */
    static List<String> shown(Set<Integer> characters) {
        return characters.stream().map(c -> Character.isISOControl(c) ? "U+" + Integer.toHexString(c) : Character.toString(c)).collect(Collectors.toList());
    }
}
