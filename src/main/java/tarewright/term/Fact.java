package tarewright.term;

import java.util.List;

/**
 * One thing that a print says, as it stands on paper.
 *
 * @param about what sort of thing: {@code setting}, {@code quantity}, {@code reaction}, {@code question}, {@code hazards}, {@code safety}, {@code warnings}
 * @param of its name: a block, a question's number, a bottle
 * @param what which of its properties
 * @param shown the text; several where it is a set, such as hazard statements
 * @param typed whether the author or the command line said it, so that it can be the cause of others
 */
public record Fact(String about, String of, String what, List<String> shown, boolean typed) {
    public Fact {
        shown = List.copyOf(shown);
    }

    /** Whether both are the same thing, whatever they say of it. */
    boolean isAbout(Fact other) {
        return about.equals(other.about) && of.equals(other.of) && what.equals(other.what);
    }
}
