package tarewright.procedure.syntax;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Prints a tree with the line and column, from 1, at which each thing starts and ends, counted in UTF-16 units. */
final class TreeText {
    private final StringBuilder out = new StringBuilder();
    private int depth;

    private TreeText() {
    }

    static String of(SourceFile file) {
        TreeText text = new TreeText();
        text.line("front", file.frontSpan());
        text.fields(file.front());
        file.body().forEach(text::part);
        return text.out.toString();
    }

    static String of(List<Finding> findings) {
        StringBuilder out = new StringBuilder();
        for (Finding finding : findings) {
            out.append(place(finding.at())).append(' ').append(finding.severity()).append(' ').append(finding.id())
                    .append(' ').append(finding.fields());
            finding.also().forEach(also -> out.append(" also ").append(place(also)));
            out.append('\n');
        }
        return out.toString();
    }

    static String place(Span span) {
        return point(span.source(), span.start()) + "-" + point(span.source(), span.end());
    }

    private static String point(SourceText source, int offset) {
        int line = source.lineAt(offset);
        return line + ":" + (offset - source.startOfLine(line) + 1);
    }

    private void line(String words, Span span) {
        out.append("  ".repeat(depth)).append(words).append(" [").append(place(span)).append("]\n");
    }

    private void within(Runnable inside) {
        depth++;
        inside.run();
        depth--;
    }

    private void fields(Fields fields) {
        within(() -> {
            for (Fields.Field field : fields.all()) {
                line("field `" + field.key() + "` key [" + place(field.keySpan()) + "]", field.span());
                within(() -> field.lines().forEach(p -> line("`" + p.text() + "`", p.span())));
            }
        });
    }

    private void part(Part part) {
        if (part instanceof TypedBlock block) {
            line("block " + block.type() + " [" + place(block.typeSpan()) + "] `" + block.name() + "` ["
                    + place(block.nameSpan()) + "]", block.span());
            within(() -> block.equation().ifPresent(e -> line("equation `" + e.text() + "`", e.span())));
            fields(block.fields());
            within(() -> block.markdown().forEach(this::part));
        } else if (part instanceof Part.Items items) {
            line(items.ordered() ? "ordered from " + items.start() : "bullets", items.span());
            within(() -> items.items().forEach(item -> {
                line(item.isQuestion() ? "question" : "item", item.span());
                within(() -> item.parts().forEach(this::part));
            }));
        } else if (part instanceof Part.Table table) {
            line("table " + table.alignments(), table.span());
            within(() -> {
                row("head", table.head());
                table.rows().forEach(r -> row("row", r));
            });
        } else if (part instanceof Part.Quote quote) {
            line("quote", quote.span());
            within(() -> quote.parts().forEach(this::part));
        } else if (part instanceof Part.Literal literal) {
            line("literal `" + literal.text().replace("\n", "\\n") + "`", literal.span());
        } else {
            line(part instanceof Part.Heading h ? "heading " + h.level() : part.getClass().getSimpleName().toLowerCase(),
                    part.span());
            within(() -> part.inlines().forEach(this::inline));
        }
    }

    private void row(String words, List<Part.Cell> cells) {
        out.append("  ".repeat(depth)).append(words).append('\n');
        within(() -> cells.forEach(cell -> {
            line("cell", cell.span());
            within(() -> cell.inlines().forEach(this::inline));
        }));
    }

    private void inline(Inline inline) {
        Optional<String> text = inline instanceof Inline.Words w ? Optional.of(w.text())
                : inline instanceof Inline.Code c ? Optional.of(c.text())
                : inline instanceof Inline.Reference r ? Optional.of(r.text())
                : inline instanceof Inline.Link l ? Optional.of(l.destination())
                : inline instanceof Inline.Picture p ? Optional.of(p.alternative() + "` from `" + p.destination())
                : Optional.empty();
        line(inline.getClass().getSimpleName().toLowerCase() + text.map(t -> " `" + t + "`").orElse(""), inline.span());
        within(() -> inline.inside().forEach(this::inline));
    }
}
