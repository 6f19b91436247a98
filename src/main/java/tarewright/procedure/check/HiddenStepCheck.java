package tarewright.procedure.check;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Part;
import tarewright.text.Span;

/**
 * A caution with an action hidden in it: who reads cautions as cautions and steps as steps leaves it out. Told by an amount in braces, or by a verb of
 * the bench that begins a clause of what avoids the danger and stands in no step. How to do what a step says (<em>pour it slowly</em> where a step pours) is
 * no hidden action, nor is what keeps safe: to wear, to keep, to hold, to rinse a splash. English verbs, and Spanish ones in the form
 * that speaks to one student.
 */
final class HiddenStepCheck implements SafetyCheck {
    private static final Pattern VERB = Pattern.compile("(?U)(?:^|[.;,:]\\s+|\\b(?:and|then|first|always|but|y|después|luego|antes|primero|siempre|pero)\\s+)(add|pour|measure|weigh|mix|stir|swirl|shake|dissolve|"
            + "dilute|filter|decant|transfer|heat|warm|boil|cool|light|ignite|evaporate|connect|join|close|open|loosen|turn|empty|fill|drain|remove|insert|"
            + "neutralise|cut|grind|crush|drop|grease|vent|release|"
            + "añade|vierte|mide|pesa|mezcla|agita|disuelve|diluye|filtra|decanta|pasa|trasvasa|calienta|hierve|enfría|enciende|evapora|conecta|une|cierra|abre|"
            + "afloja|gira|vacía|llena|quita|retira|introduce|mete|neutraliza|corta|muele|tritura|suelta|engrasa)(?=\\s+\\p{L})");
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern AMOUNT = Pattern.compile("(?<!\\\\)\\{[^{}]+\\}");

    @Override
    public void check(BenchSafety safety, Consumer<Finding> findings) {
        String steps = steps(safety);
        for (CautionBlock caution : safety.procedure().procedure().cautions()) {
            for (String key : java.util.List.of("hazard", "consequence", "avoid")) {
                caution.block().fields().get(key).ifPresent(field -> hidden(key, field.value(), steps)
                        .ifPresent(text -> findings.accept(new SafetyFinding.CautionHidesStep(text, at(field, text)))));
            }
        }
    }

    private static Span at(Fields.Field field, String text) {
        int from = field.valueSpan().text().indexOf(text);
        return from < 0 ? field.valueSpan() : field.valueSpan().part(from, from + text.length());
    }

    private static Optional<String> hidden(String key, String text, String steps) {
        Matcher amount = AMOUNT.matcher(text);
        if (amount.find()) {
            return Optional.of(amount.group());
        }
        if (!key.equals("avoid")) {
            return Optional.empty();
        }
        Matcher verb = VERB.matcher(text.toLowerCase(Locale.ROOT));
        while (verb.find()) {
            String word = verb.group(1);
            if (!Pattern.compile("(?U)\\b" + unaccented(word) + "(s|ed|ing|lo|la|los|las)?\\b").matcher(steps).find()) {
                int end = clauseEnd(text, verb.start(1));
                return Optional.of(text.substring(verb.start(1), end));
            }
        }
        return Optional.empty();
    }

    /** {@code llénala} is {@code llena} with a pronoun behind it. */
    private static String unaccented(String text) {
        return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    }

    private static int clauseEnd(String text, int from) {
        int end = from;
        while (end < text.length() && ".;,".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

    /** All that the steps say, in lower case and without accents. */
    private static String steps(BenchSafety safety) {
        StringBuilder all = new StringBuilder();
        Part.walk(safety.procedure().procedure().source().body(), part -> {
            if (part instanceof Part.Items list && list.ordered()) {
                list.items().stream().filter(i -> !i.isQuestion()).flatMap(i -> i.parts().stream()).filter(p -> !p.inlines().isEmpty())
                        .forEach(p -> all.append(p.span().text().toLowerCase(Locale.ROOT)).append(' '));
            }
        });
        return unaccented(all.toString());
    }
}
