package tarewright.procedure.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.finding.Found;
import tarewright.text.SourceText;

/** Any text at all is read, and the law of places holds of what comes out. */
class AnyTextTest {
    private static final List<String> SCRAPS = List.of("\n", "\n", "\n", "\n\n", "\n\n", " ", " ", "  ", "    ", "\t", "- ",
            "1. ", "2) ", "> ", ">", "# ",
            "---\n", "===\n", "```", "```\n", "```solid acid\n", "```answer\n", "```key\n", "````prep\n", "````\n",
                    "~~~ reaction R\n", "~~~\n",
            "mass: 2 g\n", "key : value; other", "| a | b |\n|---|:-:|\n", "|", " | ", "\\|", "{", "}", "{acid}",
                    "{mass of\n acid}", "\\{", "\\}", "\\",
            "*", "**", "_", "`", "``", "[", "](x)", "![", "](p.png)", "]", "<b>", "</b>", "<!-- note -->", "<!--", "-->",
                    "&amp;", "&deg;", "&", "<",
            "H₂O", "±", "e\u0301", "𝛥", "🧪", "acid", "of", "0.20 g", "x", ":", ";", "·", "\u00a0", "é", "\uFEFF");

    static LongStream seeds() {
        return LongStream.range(0, 25);
    }

    static String soup(SplittableRandom random, int most) {
        StringBuilder text = new StringBuilder(random.nextInt(8) == 0 ? "---\n" : "");
        IntStream.range(0, random.nextInt(most)).forEach(i -> text.append(SCRAPS.get(random.nextInt(SCRAPS.size()))));
        return text.toString();
    }

    /** A few cuts, doublings and insertions at random places. */
    static String mutated(String text, SplittableRandom random) {
        StringBuilder out = new StringBuilder(text);
        for (int i = random.nextInt(1, 6); i > 0; i--) {
            int from = random.nextInt(out.length());
            int to = Math.min(out.length(), from + random.nextInt(1, 12));
            switch (random.nextInt(3)) {
                case 0 -> out.delete(from, to);
                case 1 -> out.insert(random.nextInt(out.length()), out.substring(from, to));
                default -> out.insert(from, SCRAPS.get(random.nextInt(SCRAPS.size())));
            }
        }
        return out.toString();
    }

    private static void check(String text) {
        Found<SourceFile> found;
        try {
            found = Reader.read(new SourceText("any.md", text));
            PlacesLaw.holds(found);
        } catch (RuntimeException | Error e) {
            throw new AssertionError("in <" + text.replace("\t", "\\t").replace("\r", "\\r") + ">", e);
        }
        if (text.indexOf('\r') < 0) {
            for (String end : List.of("\r\n", "\r")) {
                Found<SourceFile> other = Reader.read(new SourceText("any.md", text.replace("\n", end)));
                assertEquals(TreeText.of(found.value()), TreeText.of(other.value()), () -> "line ends changed the tree of <"
                        + text + ">");
                assertEquals(TreeText.of(found.findings()), TreeText.of(other.findings()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ofScrapsOfTheNotation(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 60; i++) {
            check(soup(random, 12));
            check(soup(random, 60));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ofAProcedureWithMistakes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 8; i++) {
            check(mutated(Samples.HYDROGEN, random));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ofAnyUnitsAtAll(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(200); length > 0; length--) {
                text.append((char) switch (random.nextInt(4)) {
                    case 0 -> random.nextInt(0x20, 0x7F);
                    case 1 -> random.nextInt(0, 0x100);
                    case 2 -> random.nextInt(0xD7F0, 0xE010);
                    default -> "\r\n{}|`*_[]<>-".charAt(random.nextInt(13));
                });
            }
            Reader.read(new SourceText("any.md", text.toString()));
        }
    }
}
