package tarewright.wording;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;

/**
 * The calculation behind a figure, line by line from what is known to the result.
 *
 * <p>Each worked-out figure has one line. What was typed, set on an instrument or read off one is where a calculation
 * starts, and a molar mass is taken as known unless it is asked for. A figure that only takes another over has no line of
 * its own.
 */
public final class WorkedLines {
    private static final String MOLAR_MASS = "M";
    private static final double SAME = 1e-9;

    private final Numbers numbers;
    private final Quantities words;

    private WorkedLines(Numbers numbers, Quantities words) {
        this.numbers = numbers;
        this.words = words;
    }

    /** @param language BCP 47 */
    public static WorkedLines in(String language) {
        return new WorkedLines(Numbers.in(language), Quantities.in(language));
    }

    /** The lines, at least one. Those of molar masses are left out. */
    public List<WorkedLine> of(Figure result) {
        return of(result, false);
    }

    /** @param molarMasses whether the molar masses are worked out too */
    public List<WorkedLine> of(Figure result, boolean molarMasses) {
        Figure top = StepWriter.meant(result);
        List<WorkedLine> lines = new ArrayList<>();
        Set<Figure> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        if (top.step() instanceof Step.Set set) {
            collect(StepWriter.meant(set.target()), true, molarMasses, seen, lines);
            rounded(top, set.target(), set.reason()).ifPresent(lines::add);
        } else if (top.step() instanceof Step.Read read) {
            collect(StepWriter.meant(read.truth()), true, molarMasses, seen, lines);
            rounded(top, read.truth(), Reason.INSTRUMENT).ifPresent(lines::add);
        } else {
            collect(top, true, molarMasses, seen, lines);
        }
        return lines.isEmpty() ? List.of(statement(result, top)) : lines;
    }

    private void collect(Figure figure, boolean top, boolean molarMasses, Set<Figure> seen, List<WorkedLine> lines) {
        Step step = figure.step();
        boolean known = figure.from().isEmpty() || step instanceof Step.Set || step instanceof Step.Read
                || figure.symbol().letter().equals(MOLAR_MASS) && !molarMasses && !top;
        if (known || !seen.add(figure)) {
            return;
        }
        boolean extreme = step instanceof Step.Extreme;
        for (Figure from : figure.from()) {
            Figure meant = StepWriter.meant(from);
            if (extreme && meant.symbol().equals(figure.symbol()) && !meant.from().isEmpty()) {
                // Of several turns with one name, each is spelled out where the least of them is taken.
                meant.from().forEach(f -> collect(StepWriter.meant(f), false, molarMasses, seen, lines));
            } else {
                collect(meant, false, molarMasses, seen, lines);
            }
        }
        boolean spelledInAnother = StepWriter.isUnnamed(figure) && !top;
        if (!spelledInAnother) {
            lines.add(line(figure));
        }
    }

    private WorkedLine line(Figure figure) {
        List<Worked> symbols = new StepWriter(figure, false, numbers, words).written(figure.step());
        List<Worked> values = new StepWriter(figure, true, numbers, words).written(figure.step());
        Worked.Amount result = StepWriter.amount(figure, numbers);
        boolean looked = figure.step() instanceof Step.Relation;
        boolean bare = symbols.equals(values) && !looked;
        // One figure taken over as it is: its number would stand there twice.
        boolean again = looked || !bare && Worked.plain(values).equals(result.plain());
        return new WorkedLine(figure, Worked.Name.of(figure.symbol()), bare ? List.of() : symbols,
                again ? List.of() : Cancelling.in(values), result, Optional.empty());
    }

    /** Empty where the amount was a whole number of divisions already. */
    private Optional<WorkedLine> rounded(Figure figure, Figure before, Reason reason) {
        boolean same = Math.abs(figure.value() - before.value()) <= SAME * Math.abs(before.value());
        return same ? Optional.empty() : Optional.of(new WorkedLine(figure, Worked.Name.of(figure.symbol()), List.of(),
                List.of(StepWriter.amount(before, numbers)), StepWriter.amount(figure, numbers), Optional.of(reason)));
    }

    private WorkedLine statement(Figure result, Figure known) {
        Worked.Name name = Worked.Name.of(result.symbol());
        List<Worked> other = known == result || known.symbol().equals(result.symbol()) || StepWriter.isUnnamed(known) ? List.of()
                : List.of(Worked.Name.of(known.symbol()));
        return new WorkedLine(result, name, other, List.of(), StepWriter.amount(result, numbers), Optional.empty());
    }
}
