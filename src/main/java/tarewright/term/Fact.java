package tarewright.term;

import java.util.List;

/**
 * One thing that a print says, as it stands on paper.
 *
 * @param about what sort of thing: {@code setting}, {@code quantity}, {@code reaction}, {@code question}, {@code recipe}, {@code prep}, {@code stock},
 * {@code hazards}, {@code safety}, {@code warnings}
 * @param of its name: a block, a question's number, a bottle
 * @param what which of its properties
 * @param hand the number of the handout that says it, where amounts are dealt; empty where all say the same sort of thing
 * @param shown the text; several where it is a set, such as hazard statements
 * @param values the numbers in it, in coherent SI units; empty where it is no number. They tell a value that moved from digits that were typed otherwise
 * @param typed whether the author or the command line said it, so that it can be the cause of others
 */
public record Fact(String about, String of, String what, String hand, List<String> shown, List<Double> values, boolean typed) {
    private static final double SAME = 1e-9;

    public Fact {
        hand = hand == null ? "" : hand;
        shown = List.copyOf(shown);
        values = values == null ? List.of() : List.copyOf(values);
    }

    /** Whether both are the same thing, whatever they say of it and whichever handout says it. */
    boolean isAbout(Fact other) {
        return about.equals(other.about) && of.equals(other.of) && what.equals(other.what);
    }

    /** The same for every handout. */
    Fact ofAll() {
        return new Fact(about, of, what, "", shown, values, typed);
    }

    /** Whether both are numbers, and the same ones, however they are written. */
    boolean equalsInValue(Fact other) {
        if (values.isEmpty() || values.size() != other.values.size()) {
            return false;
        }
        for (int i = 0; i < values.size(); i++) {
            double here = values.get(i);
            double there = other.values.get(i);
            if (!(Math.abs(here - there) <= SAME * Math.max(Math.abs(here), Math.abs(there)))) {
                return false;
            }
        }
        return true;
    }

    /** What goes into a version code: what stands on paper, without the digits beyond it. */
    String onPaper() {
        return String.join("\u0001", about, of, what, hand, String.join("\u0002", shown), String.valueOf(typed));
    }
}
