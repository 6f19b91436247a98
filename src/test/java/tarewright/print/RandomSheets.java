package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/** Sheets of any shape: every kind of piece and text, nested as nothing forbids. */
final class RandomSheets {
    private static final String[] WORDS = {"acid", "Measure ", " of the ", "10\u202FmL", ", ", ".", "−5 °C", "H", "2", "+", " = ",
            "⇌", "magnesium ribbon ", "", " ", "µ"};

    private final SplittableRandom random;

    RandomSheets(long number) {
        random = new SplittableRandom(number);
    }

    Sheet sheet() {
        Sheet.Kind kind = Sheet.Kind.values()[random.nextInt(4)];
        Sheet.Paper paper = Sheet.Paper.values()[random.nextInt(2)];
        return new Sheet(kind, "Any sheet", "Kind", random.nextBoolean() ? "R1" : "", "v1", "en-GB", paper, "",
                new Sheet.PageWords("page", "of"), pieces(9, 0));
    }

    private List<Piece> pieces(int most, int depth) {
        List<Piece> pieces = new ArrayList<>();
        int count = random.nextInt(most + 1);
        for (int i = 0; i < count; i++) {
            pieces.add(piece(depth));
        }
        return pieces;
    }

    private Piece piece(int depth) {
        return switch (random.nextInt(depth > 2 ? 10 : 20)) {
            case 0 -> new Piece.Heading(2 + random.nextInt(3), line(depth));
            case 1 -> new Piece.RuledLines(random.nextInt(4), word());
            case 2 -> new Piece.Choices(List.of(line(depth), line(depth)), random.nextBoolean() ? Optional.of(1)
                    : Optional.empty());
            case 3 -> new Piece.Caution("WARNING", random.nextInt(4), line(depth), line(depth), line(depth));
            case 4 -> new Piece.Working(List.of(new Piece.WorkedLine(line(depth), line(depth), word()),
                    new Piece.WorkedLine(line(depth), line(depth), "")));
            case 5 -> new Piece.Display(line(depth));
            case 6 -> new Piece.FormLine(List.of(new Piece.FormField(word(), random.nextInt(4)), new Piece.FormField(word(), 1)));
            case 7 -> new Piece.Signs(List.of(new Piece.Sign("M009", word()), new Piece.Sign("X999", word()),
                    new Piece.Sign("P003", "No flame")));
            case 8 -> new Piece.Hazard(line(depth), line(depth), List.of("GHS0" + (1 + random.nextInt(9))), word(),
                    List.of(word(), word()), word(), random.nextBoolean());
            case 9, 10 -> new Piece.Paragraph(line(depth));
            case 11 -> new Piece.Bullets(List.of(pieces(3, depth + 1), pieces(3, depth + 1)));
            case 12 -> new Piece.Steps(random.nextInt(20), List.of(pieces(4, depth + 1), pieces(4, depth + 1), pieces(1, depth
                    + 1)));
            case 13 -> new Piece.Question("3 b", word(), pieces(3, depth + 1), pieces(2, depth + 1),
                    List.of(new Piece.Question("i", "1 mark", pieces(2, depth + 1), pieces(2, depth + 1), List.of())));
            case 14 -> table(depth);
            case 15 -> new Piece.Note(word(), pieces(4, depth + 1));
            case 16 -> new Piece.Together(pieces(4, depth + 1));
            case 17 -> SampleSheets.graph();
            case 18 -> new Piece.Photograph(SampleSheets.PHOTOGRAPH, word(), 5 + random.nextInt(100), 5 + random.nextInt(70));
            default -> depth == 0 ? random.nextBoolean() ? new Piece.NewPage() : new Piece.NextSheet() : new Piece.Paragraph(line(depth));
        };
    }

    private Piece table(int depth) {
        int columns = 1 + random.nextInt(4);
        List<List<List<Text>>> rows = new ArrayList<>();
        for (int i = random.nextInt(8); i >= 0; i--) {
            rows.add(row(columns, depth));
        }
        List<List<Text>> head = random.nextInt(4) == 0 ? List.of() : row(columns, depth);
        return new Piece.Table(random.nextBoolean() ? List.of() : line(depth), head, rows, List.of(false, true),
                random.nextBoolean(),
                Piece.Use.values()[random.nextInt(2)]);
    }

    private List<List<Text>> row(int columns, int depth) {
        List<List<Text>> row = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            row.add(line(depth + 1));
        }
        return row;
    }

    private List<Text> line(int depth) {
        List<Text> line = new ArrayList<>();
        for (int i = random.nextInt(depth > 1 ? 2 : 5); i >= 0; i--) {
            line.add(text(depth));
        }
        return line;
    }

    private Text text(int depth) {
        return switch (random.nextInt(depth > 3 ? 8 : 15)) {
            case 0 -> new Text.Code(word());
            case 1 -> new Text.Symbol("n");
            case 2 -> new Text.Subscript("2");
            case 3 -> new Text.Superscript("2+");
            case 4 -> new Text.Quantity("10.0\u202FmL");
            case 5 -> new Text.Blank(random.nextInt(30), word());
            case 6 -> new Text.Filled(word());
            case 7 -> new Text.Words(word());
            case 8 -> new Text.Strong(line(depth + 1));
            case 9 -> new Text.Emphasis(line(depth + 1));
            case 10 -> new Text.Chemical(List.of(new Text.Words("H"), new Text.Subscript("2"), new Text.Words("O")), "water");
            case 11 -> new Text.Chemical(line(depth + 2), "any reaction");
            case 12 -> new Text.Arrow("→", random.nextBoolean() ? List.of() : List.of(new Text.Words("MnO"),
                    new Text.Subscript("2")));
            case 13 -> new Text.Fraction(line(depth + 2), line(depth + 2));
            default -> random.nextBoolean() ? new Text.Struck(line(depth + 1)) : new Text.Break();
        };
    }

    private String word() {
        return WORDS[random.nextInt(WORDS.length)] + WORDS[random.nextInt(WORDS.length)];
    }
}
