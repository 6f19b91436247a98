package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.chemistry.Water;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/** A pot that warms by more than 10 K is worth a warning; one that comes within 20 K of boiling is an error (common practice, no source). */
final class HeatCheck implements Check {
    private static final double WARM = 10;
    private static final double MARGIN = 20;
    private static final Unit CELSIUS = Units.symbol("°C").orElseThrow();

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        Figure room = procedure.setting().room().temperature();
        double boiling = Water.boilingPoint(procedure.setting().room().pressure().value()).value().orElse(373.15);
        for (ResolvedReaction reaction : procedure.reactions()) {
            Optional<Figure> rise = reaction.temperatureRise();
            if (rise.isEmpty() || rise.get().value() <= WARM) {
                continue;
            }
            double reached = room.value() + rise.get().value();
            Severity severity = reached > boiling - MARGIN ? Severity.ERROR : Severity.WARNING;
            findings.accept(new CheckFinding.TooHot(reaction.name(), Amount.of(rise.get()), Amount.of(reached, CELSIUS), severity,
                    reaction.block().block().nameSpan()));
        }
    }
}
