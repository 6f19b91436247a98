package tarewright.command;

import java.util.ArrayList;
import java.util.List;
import tarewright.derivation.Figure;
import tarewright.procedure.check.Rehearsal;
import tarewright.quantity.Digits;
import tarewright.wording.Numbers;

/** What a rehearsal found, as lines for the console. */
final class RehearsalText {
    private static final Numbers NUMBERS = Numbers.in("en");

    private RehearsalText() {
    }

    static String of(String procedure, Rehearsal rehearsal) {
        List<String> lines = new ArrayList<>();
        lines.add(procedure + ": rehearsed with " + rehearsal.groups() + " invented groups");
        if (rehearsal.lines().isEmpty()) {
            lines.add("    nothing to rehearse: no gas in a vessel, no answer with a value");
        }
        rehearsal.lines().forEach(line -> lines.add("    " + line(line, rehearsal.groups())));
        return String.join(System.lineSeparator(), lines) + System.lineSeparator();
    }

    private static String line(Rehearsal.Line line, int groups) {
        String text = (line.question() ? "answer " : "volume of ") + line.name() + ": expected " + NUMBERS.plain(line.expected()) + ", from "
                + shown(line.expected(), line.lowest()) + " to " + shown(line.expected(), line.highest()) + ", mean " + shown(line.expected(), line.mean())
                + ", standard deviation " + spread(line);
        String overfull = line.overfull().map(n -> "; " + n + " of " + groups + " overfill the vessel").orElse("");
        String outside = line.outside().map(n -> "; " + n + " of " + groups + " outside the accepted range").orElse("");
        return text + overfull + outside;
    }

    private static String shown(Figure like, double si) {
        return NUMBERS.plain(like.unit().fromSi(si), like.unit(), Numbers.decimals(like));
    }

    /** A difference of two values: two significant figures, and in kelvin where the values are in degrees Celsius. */
    private static String spread(Rehearsal.Line line) {
        String unit = line.expected().unit().fromZero() ? line.expected().unit().symbol() : "K";
        String number = Digits.significant(line.spread() / line.expected().unit().factor(), 2);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
