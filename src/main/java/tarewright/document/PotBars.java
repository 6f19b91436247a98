package tarewright.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.procedure.resolve.ResolvedReaction.Reactant;

/** The reactants of a pot as bars, as long as each would last: dark what reacts, light what is left over. */
final class PotBars {
    private static final int LENGTH = 110;
    private static final int HIGH = 5;
    private static final int APART = 2;
    /** A bar that is longer than so many times the shortest is cut off and says so in its numbers only. */
    private static final double LONGEST = 6;

    private PotBars() {
    }

    /** @param names one for each reactant, in their order; @return nothing for a single reactant */
    static List<Piece> of(Draft draft, PotAccount pot, List<List<Text>> names) {
        List<Reactant> reactants = pot.reactants();
        double least = reactants.stream().mapToDouble(Reactant::turns).min().orElse(0);
        double most = Math.min(reactants.stream().mapToDouble(Reactant::turns).max().orElse(0), LONGEST * least);
        if (reactants.size() < 2 || least <= 0) {
            return List.of();
        }
        Pencil pencil = new Pencil(LENGTH + 3, reactants.size() * (HIGH + APART));
        List<String> said = new ArrayList<>();
        List<Text> order = new ArrayList<>();
        for (int i = 0; i < reactants.size(); i++) {
            double turns = reactants.get(i).turns();
            double length = LENGTH * Math.min(turns, most) / most;
            double reacts = LENGTH * least / most;
            double top = 1 + i * (HIGH + APART);
            pencil.box(1, top, length, HIGH, Pencil.WHITE).box(1, top, reacts, HIGH, Pencil.GREY);
            if (turns > most * (1 + 1e-9)) {
                // Two strokes, as on a scale that is broken.
                pencil.line(LENGTH - 5, top - 0.5, LENGTH - 7, top + HIGH + 0.5, 0.4).line(LENGTH - 3, top - 0.5, LENGTH - 5,
                        top + HIGH + 0.5, 0.4);
            }
            said.add(draft.say("bars.spoken", "formula", reactants.get(i).formula(), "times",
                    draft.numbers().localised(times(turns / least))));
            order.addAll(i == 0 ? List.of() : Text.words(", "));
            order.addAll(names.get(i));
        }
        return List.of(new Piece.Together(List.of(pencil.done(draft.say("bars.what") + " " + String.join("; ", said)),
                new Piece.Paragraph(draft.compose("bars.caption", Map.of("order", order))))));
    }

    private static String times(double ratio) {
        return BigDecimal.valueOf(ratio).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }
}
