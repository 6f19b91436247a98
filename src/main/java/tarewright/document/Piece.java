package tarewright.document;

import java.util.List;
import java.util.Optional;

/** A part of a page that stands on its own lines. */
public sealed interface Piece {
    /** A heading; level 1 is the document's title and is not one of these, so levels are 2 to 4. @param level 2, 3 or 4 */
    record Heading(int level, List<Text> text) implements Piece {
        public Heading {
            text = List.copyOf(text);
        }
    }

    record Paragraph(List<Text> text) implements Piece {
        public Paragraph {
            text = List.copyOf(text);
        }
    }

    record Bullets(List<List<Piece>> items) implements Piece {
        public Bullets {
            items = items.stream().map(List::copyOf).toList();
        }
    }

    /** Numbered steps with a box to tick. A caution that concerns a step is a piece of that step, before its words. */
    record Steps(int first, List<List<Piece>> steps) implements Piece {
        public Steps {
            steps = steps.stream().map(List::copyOf).toList();
        }
    }

    /**
     * One question.
     *
     * @param number as printed: {@code 3} or {@code 3 b}
     * @param marks as printed, such as {@code 2 marks}; empty if none were given
     * @param asked the question
     * @param space what follows it: ruled lines in a handout, the worked answer in a key
     * @param parts lettered parts, often none
     */
    record Question(String number, String marks, List<Piece> asked, List<Piece> space, List<Question> parts) implements Piece {
        public Question {
            asked = List.copyOf(asked);
            space = List.copyOf(space);
            parts = List.copyOf(parts);
        }
    }

    /** So many ruled lines to write on. */
    record RuledLines(int lines, String says) implements Piece {
    }

    /** An answer where a handout has ruled lines, in just their room. @param lines that the handout has, 1 or more */
    record Written(int lines, List<Text> text) implements Piece {
        public Written {
            text = List.copyOf(text);
        }
    }

    /**
     * A student's sheet inside another document: on pages of its own, set as a handout is, so that it breaks where the
     * handout breaks.
     *
     * @param kindName what it is, as printed above its title
     * @param title the procedure's title
     */
    record Leaf(String kindName, String code, Heading title, List<Piece> inside) implements Piece {
        public Leaf {
            inside = List.copyOf(inside);
        }
    }

    /** Choices, each with a box to tick. @param right the index of the one that the key ticks, if it does */
    record Choices(List<List<Text>> options, Optional<Integer> right) implements Piece {
        public Choices {
            options = options.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A table.
     *
     * @param caption often empty
     * @param head one row of column heads
     * @param rows body cells; the first cell of a row is its head if {@code rowHeads}
     * @param right one flag for each column: set flush right
     */
    record Table(List<Text> caption, List<List<Text>> head, List<List<List<Text>>> rows, List<Boolean> right,
            boolean rowHeads, Use use) implements Piece {
        public Table {
            caption = List.copyOf(caption);
            head = head.stream().map(List::copyOf).toList();
            rows = rows.stream().map(r -> r.stream().map(List::copyOf).toList()).toList();
            right = List.copyOf(right);
        }
    }

    /** What a table is for: to be read, or to be written in (taller rows). */
    enum Use { READ, FILL }

    /**
     * A safety message at a step, or a panel message.
     *
     * @param word the step word as printed: DANGER, WARNING, CAUTION, NOTICE
     * @param level 0 (danger) to 3 (notice)
     */
    record Caution(String word, int level, List<Text> hazard, List<Text> consequence, List<Text> avoid) implements Piece {
        public Caution {
            hazard = List.copyOf(hazard);
            consequence = List.copyOf(consequence);
            avoid = List.copyOf(avoid);
        }
    }

    /** Worked lines of a calculation, aligned at their first equals sign. Each line: left side, right side. */
    record Working(List<WorkedLine> lines) implements Piece {
        public Working {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One worked line: {@code n(Mg)} and {@code = m / M = 0.079 g / 24.305 g/mol = 3.25 mmol}; a remark says why, often
     * empty.
     */
    record WorkedLine(List<Text> left, List<Text> right, String remark) {
        public WorkedLine {
            left = List.copyOf(left);
            right = List.copyOf(right);
        }
    }

    /** A displayed equation on a line of its own. */
    record Display(List<Text> text) implements Piece {
        public Display {
            text = List.copyOf(text);
        }
    }

    /** What is said in a box of its own: a note to the marker, a warning of the generator. */
    record Note(String label, List<Piece> inside) implements Piece {
        public Note {
            inside = List.copyOf(inside);
        }
    }

    /**
     * The hazards of one substance or bottle.
     *
     * @param name as on the bottle
     * @param detail strength, amount, formula
     * @param pictograms codes GHS01 to GHS09 in order
     * @param signalWord as printed, empty if none
     * @param statements full sentences with their codes in front
     * @param basis which rule gave them; or that nothing is known
     * @param known false: hazards not known, treat as hazardous
     */
    record Hazard(List<Text> name, List<Text> detail, List<String> pictograms, String signalWord,
            List<String> statements, String basis, boolean known) implements Piece {
        public Hazard {
            name = List.copyOf(name);
            detail = List.copyOf(detail);
            pictograms = List.copyOf(pictograms);
            statements = List.copyOf(statements);
        }
    }

    /** Protective equipment and actions: ISO 7010 sign codes with their words. */
    record Signs(List<Sign> signs) implements Piece {
        public Signs {
            signs = List.copyOf(signs);
        }
    }

    record Sign(String code, String words) {
    }

    /**
     * What is read from across the room, large: the strongest signal word, every pictogram with what it stands for, what to
     * wear and have at hand.
     *
     * @param word as printed; that nothing is classified, where nothing is
     * @param marks pictograms of all that is on the bench, each once
     * @param signs with a few words each
     */
    record Wall(String word, List<WallMark> marks, List<Sign> signs) implements Piece {
        public Wall {
            marks = List.copyOf(marks);
            signs = List.copyOf(signs);
        }
    }

    /** @param code GHS01 to GHS09, or the general warning sign for what is not known @param names what it stands for */
    record WallMark(String code, String names) {
    }

    /** A vector drawing. @param svg flat colours, no script, no text; @param spoken its text alternative */
    record Drawing(String svg, String spoken, double widthMillimetres, double heightMillimetres) implements Piece {
    }

    /** A picture in dots. @param png a PNG file without transparency, in base 64; @param spoken its text alternative */
    record Photograph(String png, String spoken, double widthMillimetres, double heightMillimetres) implements Piece {
    }

    /**
     * Ruled axes. In the key with what is expected on them.
     *
     * @param points in shares of both axes, from 0 to 1
     * @param line its corners, in the same shares; empty for none
     * @param spoken the text alternative of the drawing
     */
    record Graph(Axis x, Axis y, List<Spot> points, List<Spot> line, String spoken) implements Piece {
        public Graph {
            points = List.copyOf(points);
            line = List.copyOf(line);
        }
    }

    /**
     * An axis of a graph.
     *
     * @param name with its unit
     * @param numbers along it, at even distances from end to end; empty ones where the students number it themselves; two or more
     * @param parts into which the ruling parts each distance
     */
    record Axis(String name, List<String> numbers, int parts) {
        public Axis {
            numbers = List.copyOf(numbers);
            if (numbers.size() < 2 || parts < 1) {
                throw new IllegalArgumentException("an axis without a length");
            }
        }
    }

    /** A place on a graph, in shares of its axes. */
    record Spot(double x, double y) {
    }

    /** Pieces that stay together on one page. */
    record Together(List<Piece> inside) implements Piece {
        public Together {
            inside = List.copyOf(inside);
        }
    }

    /** A line of fields to fill by hand: {@code Name ______ Group ____ Date ______}. */
    record FormLine(List<FormField> fields) implements Piece {
        public FormLine {
            fields = List.copyOf(fields);
        }
    }

    /** @param share of the line's width, in parts */
    record FormField(String label, int share) {
    }

    /**
     * Bottle labels in a grid that covers the page, row by row; as many pages as they need. They stand alone in a sheet of
     * labels.
     *
     * @param grid where the labels of the paper lie
     */
    record Labels(LabelGrid grid, List<Label> labels) implements Piece {
        public Labels {
            labels = List.copyOf(labels);
        }
    }

    /**
     * Where labels lie on the page: all of one size, without gaps, and the same margin at opposite edges.
     *
     * @param columns 1 or more
     * @param rows 1 or more
     * @param marginTop in millimetres, also at the foot
     * @param marginLeft in millimetres, also at the right
     */
    record LabelGrid(int columns, int rows, double marginTop, double marginLeft) {
        public LabelGrid {
            if (columns < 1 || rows < 1 || marginTop < 0 || marginLeft < 0) {
                throw new IllegalArgumentException("a grid of labels with no place for one");
            }
        }
    }

    /**
     * The label of one container.
     *
     * @param name what is in it
     * @param detail strength, formula, amount
     * @param pictograms codes GHS01 to GHS09 in order
     * @param signalWord as printed, empty if none
     * @param statements full sentences with their codes in front
     * @param foot small lines at the end: date, maker, procedure
     * @param known false: hazards not known, treat as hazardous
     */
    record Label(List<Text> name, List<Text> detail, List<String> pictograms, String signalWord, List<String> statements,
            List<String> foot, boolean known) {
        public Label {
            name = List.copyOf(name);
            detail = List.copyOf(detail);
            pictograms = List.copyOf(pictograms);
            statements = List.copyOf(statements);
            foot = List.copyOf(foot);
        }
    }

    /** Start a new page. */
    record NewPage() implements Piece {
    }

    /** The next of several sheets in one document, each for other readers: a page 1 of its own, with the first lines of the document again. */
    record NextSheet() implements Piece {
    }
}
