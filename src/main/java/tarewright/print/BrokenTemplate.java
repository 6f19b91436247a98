package tarewright.print;

import java.util.Optional;

/**
 * A template that cannot be used: the mistake of whoever changed it, so it names the file and the place. The templates that we
 * pack never cause one.
 */
public final class BrokenTemplate extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String template;
    private final int line;
    private final int column;

    BrokenTemplate(String template, Optional<Integer> line, Optional<Integer> column, String says) {
        super(says);
        this.template = template;
        this.line = line.orElse(0);
        this.column = column.orElse(0);
    }

    /** The file's name within the folder of templates. */
    public String template() {
        return template;
    }

    /** The line, counted from 1, where it is known. */
    public Optional<Integer> line() {
        return line > 0 ? Optional.of(line) : Optional.empty();
    }

    /** The column, counted from 1, where it is known. */
    public Optional<Integer> column() {
        return column > 0 ? Optional.of(column) : Optional.empty();
    }

    /** What the reader of templates has to say about it, in English. */
    public String says() {
        return getMessage();
    }
}
