package tarewright.print;

/** Lines of text under prefixes: the first line inside one takes its lead, the others its indent. */
final class Lines {
    private final StringBuilder out = new StringBuilder();
    private String lead = "";
    private String indent = "";

    void add(String text) {
        text.lines().forEach(line -> {
            out.append((lead + line).stripTrailing()).append('\n');
            lead = indent;
        });
    }

    void gap() {
        out.append('\n');
    }

    void under(String first, String rest, Runnable inside) {
        String before = indent;
        lead = lead + first;
        indent = indent + rest;
        inside.run();
        indent = before;
        lead = before;
    }

    String text() {
        return out.toString();
    }
}
