package tarewright.print;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A file, and what was noticed while it was made.
 *
 * @param pdf the file's bytes: the same sheet and templates give the same bytes
 * @param pages how many, from 1; 0 for a file of another format, which has no pages of its own
 * @param missing code points that no typeface of ours has, in order: each prints as {@code #}, so a person must be told
 * @param spilled a label holds more than its field, so that the labels below no longer lie on those of the paper
 * @param remarks what the layout engine had to say, in its own words: a style that it does not know, an address that was refused
 */
public record Printed(byte[] pdf, int pages, SortedSet<Integer> missing, boolean spilled,
        List<String> remarks) {
    public Printed {
        pdf = pdf.clone();
        missing = Collections.unmodifiableSortedSet(new TreeSet<>(missing));
        remarks = List.copyOf(remarks);
    }

    /** A file without pages, such as one for a browser. */
    public static Printed unpaged(byte[] file) {
        return new Printed(file, 0, new TreeSet<>(), false, List.of());
    }

    @Override
    public byte[] pdf() {
        return pdf.clone();
    }
}
