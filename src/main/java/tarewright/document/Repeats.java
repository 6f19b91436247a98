package tarewright.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Worked lines without those that stand in an earlier part of the same document. */
final class Repeats {
    private Repeats() {
    }

    /** @param pieces headings, and headings kept together with lines. @param before the earlier ones. A heading over nothing goes too */
    static List<Piece> in(List<Piece> pieces, List<Piece> before) {
        Set<Piece.WorkedLine> known = new HashSet<>(lines(before));
        List<Piece> left = new ArrayList<>();
        for (Piece piece : pieces) {
            if (!(piece instanceof Piece.Together together)) {
                left.add(piece);
                continue;
            }
            List<Piece.WorkedLine> fresh = lines(together.inside()).stream().filter(line -> !known.contains(line)).toList();
            if (!fresh.isEmpty()) {
                List<Piece> inside = new ArrayList<>(together.inside().stream().filter(p -> !(p instanceof Piece.Working)).toList());
                inside.add(new Piece.Working(fresh));
                left.add(new Piece.Together(inside));
            }
        }
        return left.stream().allMatch(Piece.Heading.class::isInstance) ? List.of() : left;
    }

    private static List<Piece.WorkedLine> lines(List<Piece> pieces) {
        List<Piece.WorkedLine> lines = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Together together) {
                lines.addAll(lines(together.inside()));
            } else if (piece instanceof Piece.Working working) {
                lines.addAll(working.lines());
            }
        }
        return lines;
    }
}
