package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.Equation;
import tarewright.chemistry.State;
import tarewright.derivation.Reason;
import tarewright.procedure.declare.Notes.StepWord;
import tarewright.safety.HoodReason;
import tarewright.safety.LimitCheck;
import tarewright.safety.PairRule;
import tarewright.safety.Remark;
import tarewright.safety.ResponseRule;
import tarewright.safety.Restriction;
import tarewright.safety.SignalWord;
import tarewright.wording.DocumentWords;
import tarewright.wording.MessageFile;

/** Whatever the floors below can say has words. */
class WordsTest {
    private static final DocumentWords WORDS = DocumentWords.in("en");
    private static final Pattern KEY = Pattern.compile("\"([a-z]+(?:[.-][a-z-]*)*)\"");
    /** What the keys of the file start with. */
    private static final Set<String> FIRST = MessageFile.of("documents", "en").keys().stream().map(k -> k.split("[.]")[0])
            .filter(k -> !k.equals("link") && !k.equals("page") && !k.equals("picture")).collect(Collectors.toSet());

    static Stream<String> keys() {
        return Stream.of(
                of("remark.", Remark.About.values()), of("restriction.", Restriction.values()),
                        of("signal.", SignalWord.values()),
                of("caution.", StepWord.values()), of("rounding.", Reason.values()), of("spoken.sign.", Equation.Sign.values()),
                of("air.scene.", LimitCheck.Scene.values()), of("air.limit.", LimitCheck.Kind.values()),
                of("accident.", ResponseRule.Topic.values()), of("apart.", PairRule.Severity.values()),
                Arrays.stream(State.values()).map(s -> "spoken.state." + s.letters()),
                Stream.of(HoodReason.Why.TOXIC_IF_INHALED, HoodReason.Why.NOT_KNOWN).map(w -> "air.why." + word(w)))
                .flatMap(s -> s);
    }

    private static Stream<String> of(String before, Enum<?>[] values) {
        return Arrays.stream(values).map(v -> before + word(v));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @ParameterizedTest
    @MethodSource("keys")
    void eachHasWords(String key) {
        assertTrue(WORDS.find(key).filter(w -> !w.isBlank()).isPresent(), key);
    }

    /** Every key that the documents' code names is in the file, and every key of the file is named, whole or by its start. */
    @Test
    void keysAndCodeAgree() throws IOException {
        Set<String> named = new TreeSet<>();
        for (String folder : List.of("document", "wording")) {
            try (Stream<Path> files = Files.list(Path.of("src/main/java/tarewright", folder))) {
                for (Path file : files.toList()) {
                    Matcher literal = KEY.matcher(Files.readString(file));
                    while (literal.find()) {
                        named.add(literal.group(1));
                    }
                }
            }
        }
        List<String> missing = named.stream().filter(k -> k.contains(".") && !k.endsWith(".") && !k.endsWith("-") && WORDS.find(k)
                .isEmpty())
                .filter(k -> WORDS.find(k + "-because").isEmpty()).filter(k -> FIRST.contains(k.split("[.]")[0])).toList();
        assertEquals(List.of(), missing);
        List<String> unused = MessageFile.of("documents", "en").keys().stream()
                .filter(k -> named.stream().noneMatch(n -> k.equals(n) || (n.endsWith(".") || n.endsWith("-")
                        || n.equals(k.replace("-because", ""))) && k.startsWith(n))).toList();
        assertEquals(List.of(), unused);
    }
}
