package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.finding.Found;
import tarewright.text.SourceText;
import tarewright.text.Span;

/**
 * Random well-formed documents whose every word is another: each comes out of the tree just once, at its place, in the kind of
 * thing that it was written as, whatever lists, quotes and tables it stands in.
 */
class NothingLostTest {
    private static final Pattern WORD = Pattern.compile("[a-z]q\\d+z");

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyWordComesOutOnceAtItsPlace(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String text = new Writer(random).document();
        String ends = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
        Found<SourceFile> found = Reader.read(new SourceText("words.md", text.replace("\n", ends)));
        assertEquals("", TreeText.of(found.findings()), text);
        List<String> written = words(found.value().text().content(), 0);
        Leaves leaves = new Leaves();
        leaves.file(found.value());
        written.sort(null);
        leaves.words.sort(null);
        assertEquals(written, leaves.words, text);
    }

    /** Each word with where it stands in a text that starts at an offset. */
    private static List<String> words(String text, int offset) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            words.add(matcher.group() + " at " + (offset + matcher.start()));
        }
        return words;
    }

    /** Gathers the words of a tree; the first letter of each says what it must be part of. */
    private static final class Leaves {
        private final List<String> words = new ArrayList<>();

        void file(SourceFile file) {
            fields(file.front());
            Part.walk(file.body(), this::part);
        }

        private void add(String kind, String text, Span span) {
            List<String> here = words(span.text(), span.start());
            here.forEach(word -> assertEquals(kind, word.substring(0, 1), word));
            assertEquals(words(text, 0).stream().map(w -> w.split(" ")[0]).toList(), here.stream().map(w -> w.split(" ")[0])
                    .toList());
            words.addAll(here);
        }

        private void fields(Fields fields) {
            fields.all().forEach(field -> {
                add("k", field.key(), field.keySpan());
                field.lines().forEach(line -> add("v", line.text(), line.span()));
            });
        }

        private void part(Part part) {
            part.inlines().forEach(top -> Inline.walk(top, inline -> {
                if (inline instanceof Inline.Words w) {
                    add("w", w.text(), w.span());
                } else if (inline instanceof Inline.Reference r) {
                    add("r", r.text(), r.span());
                } else if (inline instanceof Inline.Code c) {
                    add("c", c.text(), c.span());
                }
            }));
            if (part instanceof TypedBlock block) {
                add("n", block.name(), block.nameSpan());
                block.equation().ifPresent(e -> add("e", e.text(), e.span()));
                fields(block.fields());
            } else if (part instanceof Part.Literal literal) {
                add("l", literal.text(), literal.span());
            }
        }
    }

    /** Writes a document; a word is its kind, {@code q}, a number of its own and {@code z}. */
    private static final class Writer {
        private static final List<String> TYPES = List.of("solid", "gas", "value", "answer", "caution", "section");
        private final SplittableRandom random;
        private int count;

        Writer(SplittableRandom random) {
            this.random = random;
        }

        private String word(String kind) {
            return kind + "q" + count++ + "z";
        }

        String document() {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
            if (random.nextBoolean()) {
                text.append("---\n").append(String.join("\n", fields())).append("\n---\n");
            }
            blocks(0).forEach(line -> text.append(line).append('\n'));
            return text.toString();
        }

        private List<String> blocks(int depth) {
            List<String> lines = new ArrayList<>();
            for (int i = random.nextInt(1, 5); i > 0; i--) {
                lines.addAll(block(depth));
                lines.add("");
            }
            lines.remove(lines.size() - 1);
            return lines;
        }

        private List<String> block(int depth) {
            return switch (random.nextInt(depth < 3 ? 12 : 7)) {
                case 0 -> List.of("#".repeat(random.nextInt(1, 7)) + " " + running(false));
                case 1 -> fenced("l", List.of(word("l"), "", "  " + word("l")), "```", random.nextBoolean() ? "" : "text");
                case 2 -> table();
                case 3 -> fenced("v", fields(), "```", TYPES.get(random.nextInt(TYPES.size())) + "  " + word("n") + " "
                        + word("n"));
                case 4 -> reaction();
                case 5, 6 -> paragraph();
                case 7 -> fenced("w", blocksWithoutTyped(), "````", random.nextBoolean() ? "key" : "prep");
                case 8, 9 -> list(depth, random.nextBoolean() ? "- " : random.nextBoolean() ? random.nextInt(1, 200) + ". "
                        : depth == 0 ? "-\t" : "* ");
                default -> inside(blocks(depth + 1), "> ", "> ");
            };
        }

        private List<String> list(int depth, String marker) {
            String indent = marker.endsWith("\t") ? "\t" : " ".repeat(marker.length());
            List<String> lines = new ArrayList<>();
            for (int i = random.nextInt(1, 4); i > 0; i--) {
                List<String> item = new ArrayList<>(paragraph());
                item.add("");
                item.addAll(blocks(depth + 1));
                lines.addAll(inside(item, marker, indent));
                lines.add("");
            }
            lines.add("<!-- so that the next list is another -->");
            return lines;
        }

        private static List<String> inside(List<String> lines, String first, String others) {
            List<String> prefixed = new ArrayList<>();
            for (String line : lines) {
                String prefix = prefixed.isEmpty() ? first : others;
                prefixed.add(line.isEmpty() ? prefix.stripTrailing() : prefix + line);
            }
            return prefixed;
        }

        private List<String> blocksWithoutTyped() {
            List<String> lines = new ArrayList<>(paragraph());
            lines.add("");
            lines.addAll(table());
            lines.add("");
            lines.addAll(inside(paragraph(), "1. ", "   "));
            return lines;
        }

        private List<String> fenced(String kind, List<String> inside, String fence, String info) {
            String indent = " ".repeat(random.nextInt(4));
            List<String> lines = new ArrayList<>(List.of(indent + fence + info));
            inside.forEach(line -> lines.add(line.isEmpty() ? "" : indent + line));
            lines.add(indent + fence);
            return lines;
        }

        private List<String> reaction() {
            List<String> lines = new ArrayList<>(List.of("", word("e") + " -> " + word("e"), ""));
            lines.addAll(fields());
            return fenced("e", lines, "```", "reaction " + word("n"));
        }

        private List<String> fields() {
            List<String> lines = new ArrayList<>();
            for (int i = random.nextInt(1, 4); i > 0; i--) {
                lines.add(word("k") + " " + word("k") + (random.nextBoolean() ? ": " + word("v") + "; {" + word("v") + "} *"
                        : " :"));
                for (int more = random.nextInt(3); more > 0; more--) {
                    lines.add((random.nextBoolean() ? "\t" : "  ") + word("v") + ": " + word("v"));
                }
                if (random.nextInt(4) == 0) {
                    lines.add("");
                    lines.add("<!-- " + "a note: not a field" + " -->");
                }
            }
            return lines;
        }

        private List<String> table() {
            int columns = random.nextInt(1, 4);
            List<String> lines = new ArrayList<>(List.of(row(columns), "|" + " --- |".repeat(columns)));
            for (int i = random.nextInt(4); i > 0; i--) {
                lines.add(row(random.nextInt(1, columns + 1)));
            }
            return lines;
        }

        private String row(int columns) {
            StringBuilder row = new StringBuilder("|");
            for (int i = 0; i < columns; i++) {
                row.append(random.nextInt(3) == 0 ? " x\\|y " : " ").append(running(false)).append(random.nextBoolean()
                        ? "\t|" : " |");
            }
            return row.toString();
        }

        private List<String> paragraph() {
            return List.of(("𝛥 " + running(true)).split("\n"));
        }

        private String running(boolean lineBreaks) {
            StringBuilder text = new StringBuilder(word("w"));
            for (int i = random.nextInt(6); i > 0; i--) {
                String gap = lineBreaks && random.nextInt(4) == 0 ? random.nextBoolean() ? "\n" : "  \n" : " ";
                text.append(gap).append(switch (random.nextInt(9)) {
                    case 0 -> "{" + word("r") + (lineBreaks && random.nextBoolean() ? "\n" : " of ") + word("r") + "}";
                    case 1 -> "{" + "_" + word("r") + "_*}";
                    case 2 -> "**" + word("w") + " {" + word("r") + "}**";
                    case 3 -> "`" + word("c") + " {" + word("c") + "}`";
                    case 4 -> "[" + word("w") + "](x)";
                    case 5 -> "\\{" + word("w") + "\\}";
                    case 6 -> "![" + word("w") + " *{" + word("r") + "}*](p.png)";
                    case 7 -> "<!-- note -->" + word("w") + "&nbsp;&#x2082;";
                    default -> "e\u0301🧪" + word("w") + "±";
                });
            }
            return text.toString();
        }
    }
}
