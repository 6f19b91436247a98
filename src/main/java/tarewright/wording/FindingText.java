package tarewright.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.SourceText;
import tarewright.text.Span;

/**
 * Findings as plain text for a terminal or a log:
 *
 * <pre>
 * magnesium.md:7:28: error: `Ml` is not a unit
 *     volume: 25.0 Ml
 *                  ^^
 *     write instead: `mL` for millilitres
 *     finding: unknown-unit
 * </pre>
 */
public final class FindingText {
    private static final String INDENT = "    ";
    private static final int WIDEST = 100;
    private static final Comparator<Finding> IN_SOURCE_ORDER = Comparator
            .comparing((Finding f) -> f.at().source().name())
            .thenComparing(f -> f.at().start())
            .thenComparing(Finding::severity)
            .thenComparing(Finding::id);

    private final FindingWords words;
    private final MessageFile labels;

    private FindingText(FindingWords words, MessageFile labels) {
        this.words = words;
        this.labels = labels;
    }

    /** @param language BCP 47 */
    public static FindingText in(String language) {
        return new FindingText(FindingWords.in(language), MessageFile.of("reports", language));
    }

    /** Findings by file, then by place; the same finding once. */
    public static List<Finding> sorted(List<Finding> findings) {
        return findings.stream().distinct().sorted(IN_SOURCE_ORDER).toList();
    }

    /** The headline with its place, on one line. */
    public String line(Finding finding) {
        return line(finding, words.words(finding));
    }

    private String line(Finding finding, FindingWords.Words said) {
        return finding.at() + ": " + severity(finding.severity()) + ": " + said.headline();
    }

    /**
     * The long form: headline, the source line with carets, what to write instead, what else is known. Ends without a line
     * end.
     */
    public String full(Finding finding) {
        FindingWords.Words said = words.words(finding);
        List<String> lines = new ArrayList<>();
        lines.add(line(finding, said));
        pointed(finding.at()).forEach(line -> lines.add(INDENT + line));
        said.mend().forEach(mend -> lines.add(INDENT + labels.get("write-instead") + " " + mend));
        said.more().forEach(more -> lines.add(INDENT + more));
        otherLines(finding).forEach(span -> lines.add(INDENT + labels.get("see-also") + " " + lineName(span) + ": "
                + pointed(span).get(0)));
        lines.add(INDENT + labels.get("more") + " " + finding.id());
        return lines.stream().map(String::stripTrailing).collect(Collectors.joining("\n"));
    }

    /** All findings in source order in the long form, and how many there are; empty if there are none. */
    public String report(List<Finding> findings) {
        List<Finding> sorted = sorted(findings);
        return sorted.isEmpty() ? ""
                : sorted.stream().map(this::full).collect(Collectors.joining("\n\n")) + "\n\n" + count(sorted) + "\n";
    }

    /** {@code 2 errors, 1 warning}. */
    public String count(List<Finding> findings) {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = findings.stream().filter(f -> f.severity() == severity).count();
            if (count > 0) {
                String key = "count." + severity(severity, count == 1 ? ".one" : ".many");
                counts.add(labels.get(key).replace("{count}", String.valueOf(count)));
            }
        }
        return String.join(", ", counts);
    }

    /** The fields by which a program reads a finding: id, severity, line, column, message, mend; in this order. */
    public Map<String, Object> fields(Finding finding) {
        FindingWords.Words said = words.words(finding);
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("id", finding.id());
        fields.put("severity", severity(finding.severity(), ""));
        fields.put("line", finding.at().line());
        fields.put("column", finding.at().column());
        fields.put("message", said.headline());
        fields.put("mend", String.join("\n", said.mend()));
        return fields;
    }

    private String severity(Severity severity) {
        return labels.get("severity." + severity(severity, ""));
    }

    private static String severity(Severity severity, String behind) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
        } + behind;
    }

    /** The source line and its carets; of a stretch over several lines, what stands on the first. */
    private static List<String> pointed(Span span) {
        SourceText source = span.source();
        int start = source.startOfLine(span.line());
        return Shown.pointed(source.line(span.line()), span.start() - start, span.end() - start, WIDEST);
    }

    /** Second places on lines that have not been shown. */
    private static List<Span> otherLines(Finding finding) {
        Set<String> seen = new LinkedHashSet<>(List.of(lineName(finding.at())));
        return finding.also().stream().filter(span -> seen.add(lineName(span))).toList();
    }

    private static String lineName(Span span) {
        return span.source().name() + ":" + span.line();
    }
}
