package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.syntax.Inline;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/**
 * A number with a unit in a step that is, or nearly is, the amount of a block: it would stay as it is when the block
 * changes. Rounded to fewer digits it counts as the same; <em>about 50 mL</em> of something to dissolve it in does not.
 */
final class HandTypedCheck implements Check {
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\p{L}\\d.,])\\d+(?:[.,]\\d+)?[ \\u00A0\\u202F]?"
            + "(?:[mcdkµμ]?[gLl]|mol|mmol|[mc]m|cm3|cm³|dm3|dm³)(?![\\p{L}\\d/³²])");
    private static final Pattern ROUGHLY = Pattern.compile("(?i)\\b(about|roughly|around|nearly|some|unos|unas|casi|aproximadamente|alrededor de)\\s+$");
    /** A two-figure amount typed for a three-figure one. */
    private static final double NEARLY = 0.02;

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (StepText step : StepText.of(procedure.procedure().source().body())) {
            for (Inline.Words words : step.typed()) {
                Matcher typed = AMOUNT.matcher(words.text());
                while (typed.find()) {
                    if (!ROUGHLY.matcher(words.text().substring(0, typed.start())).find()) {
                        tell(procedure, words, typed, findings);
                    }
                }
            }
        }
    }

    private static void tell(Resolved procedure, Inline.Words words, Matcher found, Consumer<Finding> findings) {
        if (!(QuantityText.parse(found.group()) instanceof QuantityResult.Ok ok)) {
            return;
        }
        for (ResolvedQuantity quantity : procedure.quantities()) {
            Optional<Figure> same = Stream.of(quantity.amount(), quantity.figure(Property.LENGTH)).flatMap(Optional::stream)
                    .filter(a -> isSame(a, ok.typed())).findFirst();
            if (quantity.taken() && same.isPresent()) {
                boolean verbatim = words.span().text().equals(words.text());
                findings.accept(new PageFinding.TypedByHand(found.group(), quantity.name(), Amount.of(same.get()),
                        verbatim ? words.span().part(found.start(), found.end()) : words.span()));
                return;
            }
        }
    }

    private static boolean isSame(Figure figure, Typed typed) {
        return figure.dimension().equals(typed.dimension())
                && Math.abs(figure.value() - typed.si()) <= NEARLY * Math.abs(figure.value());
    }
}
