package tarewright.procedure.check;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Referent;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.syntax.Inline;
import tarewright.text.Span;

/**
 * Two things to do in one sentence of a step: who reads a line, does it and comes back to the page loses the second.
 * Told where a sentence has two amounts to measure out, goes on with <em>then</em> and a verb of the bench, or has
 * three such verbs. Two verbs that are one movement of the hands (<em>warm and stir</em>) are left alone. English verbs
 * and Spanish ones in the form that speaks to one student (<em>mide, vierte</em>).
 */
final class ActionsCheck implements Check {
    private static final Pattern SENTENCE = Pattern.compile("[^.?!]+(?:[.?!](?!\\s|$)[^.?!]*)*[.?!]?");
    private static final String VERBS = "(add|pour|measure|weigh|mix|stir|swirl|shake|dissolve|dilute|filter|decant|transfer|heat|warm|"
            + "boil|cool|light|ignite|"
            + "evaporate|connect|join|close|open|turn|empty|fill|drain|remove|insert|cut|grind|crush|"
            + "drop|release|read|write|rinse|"
            + "wash|dry|put|place|push|pull|"
            + "take|stand|run|tip|draw|move|collect|carry|"
            + "añade|vierte|mide|pesa|mezcla|agita|disuelve|diluye|filtra|decanta|pasa|trasvasa|calienta|hierve|enfría|enciende|evapora|conecta|une|"
            + "cierra|abre|gira|vacía|llena|quita|retira|introduce|mete|corta|muele|tritura|suelta|lee|escribe|anota|apunta|enjuaga|aclara|lava|seca|pon|coloca|"
            + "empuja|tira|coge|toma|saca|mueve|recoge|lleva|enrasa|tapa|destapa)";
    private static final Pattern THEN = Pattern.compile("(?U)(?<=[,;]|\\band|\\by)\\s+(?:then|después|luego)\\s+(" + VERBS + "\\b)");
    private static final Pattern VERB = Pattern.compile("(?U)(?:^|[,;]\\s+(?:(?:and|y)\\s+)?|\\b(?:and|y)\\s+)" + VERBS + "\\b");
    private static final int TOO_MANY = 3;

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (StepText step : StepText.of(procedure.procedure().source().body())) {
            Matcher sentence = SENTENCE.matcher(step.words());
            while (sentence.find()) {
                second(procedure, step, sentence.start(), sentence.group()).ifPresent(findings);
            }
        }
    }

    private static Optional<Finding> second(Resolved procedure, StepText step, int from, String sentence) {
        Set<String> measured = new HashSet<>();
        int before = step.referencesBefore(from);
        List<Inline.Reference> inside = step.references().subList(before, step.referencesBefore(from + sentence.length()));
        for (Inline.Reference reference : inside) {
            Optional<String> block = measured(procedure, reference);
            if (block.isPresent() && measured.add(block.get()) && measured.size() > 1) {
                return Optional.of(new PageFinding.TwoActions("{" + reference.text() + "}", reference.span()));
            }
        }
        String lower = sentence.strip().toLowerCase(Locale.ROOT);
        Matcher then = THEN.matcher(lower);
        if (then.find()) {
            return Optional.of(new PageFinding.TwoActions(then.group(1), place(step, sentence.strip(), then.start(1),
                    then.end(1))));
        }
        Matcher verb = VERB.matcher(lower);
        for (int count = 1; verb.find(); count++) {
            if (count == TOO_MANY) {
                return Optional.of(new PageFinding.TwoActions(verb.group(1), place(step, sentence.strip(), verb.start(1),
                        verb.end(1))));
            }
        }
        return Optional.empty();
    }

    /** The block that an amount to measure out belongs to. */
    private static Optional<String> measured(Resolved procedure, Inline.Reference reference) {
        return procedure.referent(reference) instanceof Referent.Amount amount && amount.measured()
                ? procedure.quantities().stream().filter(q -> q.figures().containsValue(amount.figure()))
                .map(ResolvedQuantity::name).findFirst()
                : Optional.empty();
    }

    /** The words in the source, where they stand there as they are read. */
    private static Span place(StepText step, String sentence, int from, int to) {
        String last = sentence.substring(sentence.lastIndexOf(StepText.REFERENCE, from) + 1, to);
        int at = step.at().text().indexOf(last);
        return at < 0 ? step.at() : step.at().part(at + last.length() - (to - from), at + last.length());
    }
}
