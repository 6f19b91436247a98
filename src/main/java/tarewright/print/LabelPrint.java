package tarewright.print;

import java.util.List;
import tarewright.document.Piece;
import tarewright.document.Text;

/**
 * The sizes of print on a label, largest first, in points: the same as in {@code labels.css}. Small is 7 pt, an x-height of
 * 1.2 mm, the least that Regulation (EU) 2024/2865 asks of a label (from memory).
 */
enum LabelPrint {
    ROOMY(12, 18, 14, 17, 9), LARGE(10, 14, 11, 13, 10), MIDDLE(8.5, 12, 9, 11, 8.5), SMALL(7, 12, 9, 11, 7);

    private static final double POINT = 25.4 / 72;
    private static final double LINE = 1.17;
    /** The width of a letter of running text, in parts of its size; a little on the wide side. */
    private static final double LETTER = 0.5;
    private static final double PADDING_ACROSS = 6;
    private static final double PADDING_DOWN = 6.5;
    /** Corner to corner: a square of 10 mm on its tip, the least by Regulation (EC) No 1272/2008, annex I, 1.2.1.4 (from memory). */
    private static final double PICTOGRAM = 14.2;

    private final double body;
    private final double name;
    private final double detail;
    private final double signal;
    private final double foot;

    LabelPrint(double body, double name, double detail, double signal, double foot) {
        this.body = body;
        this.name = name;
        this.detail = detail;
        this.signal = signal;
        this.foot = foot;
    }

    /** How high a label is about to get, in millimetres. @param width of the label in millimetres */
    double height(Piece.Label label, double width) {
        double across = width - PADDING_ACROSS;
        int pictograms = Math.max(label.pictograms().size(), label.known() ? 0 : 1);
        int beside = pictograms > 2 ? 2 : Math.min(1, pictograms);
        double told = across - beside * (PICTOGRAM + 1.7);
        double text = lines(List.of(label.signalWord()), signal, told) + lines(label.statements(), body, told)
                + lines(label.foot(), foot, told);
        double pictures = PICTOGRAM * (beside == 0 ? 0 : (pictograms + beside - 1) / beside);
        return PADDING_DOWN + lines(List.of(bare(label.name())), name, across) + lines(List.of(bare(label.detail())), detail, across)
                + Math.max(text, pictures);
    }

    private static double lines(List<String> paragraphs, double size, double across) {
        double letters = Math.max(1, across / (size * POINT * LETTER));
        return paragraphs.stream().mapToDouble(p -> Math.ceil(p.length() / letters)).sum() * size * POINT * LINE;
    }

    private static String bare(List<Text> text) {
        return PlainText.bare(text);
    }
}
