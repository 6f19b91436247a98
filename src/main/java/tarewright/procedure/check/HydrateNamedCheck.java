package tarewright.procedure.check;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.exact.Rational;
import tarewright.finding.Finding;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;

/**
 * A hydrate whose number of waters students are to find, and whose number stands in a word of the text: <em>pentahydrate</em>, <em>the hydrate with 5 waters</em>. A formula is
 * replaced where it is printed; a word is the author's to change, since a sentence may hang on it. English and Spanish.
 */
final class HydrateNamedCheck implements Check {
    /** Prefixes of IUPAC's multiplying affixes, with the two older spellings of nine and eleven. */
    private static final Map<String, String> PREFIXES = Map.ofEntries(Map.entry("1", "mono"), Map.entry("2", "di"), Map.entry("3", "tri"), Map.entry("4", "tetra"),
            Map.entry("5", "penta"), Map.entry("6", "hexa"), Map.entry("7", "hepta"), Map.entry("8", "octa"), Map.entry("9", "nona|ennea"), Map.entry("10", "deca"),
            Map.entry("11", "undeca|hendeca"), Map.entry("12", "dodeca"), Map.entry("16", "hexadeca"), Map.entry("18", "octadeca"), Map.entry("1/2", "hemi"));
    private static final Map<String, String> NUMBERS = Map.of("1", "one|una?", "2", "two|dos", "3", "three|tres", "4", "four|cuatro", "5", "five|cinco", "6", "six|seis",
            "7", "seven|siete", "8", "eight|ocho", "10", "ten|diez", "12", "twelve|doce");

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        for (ResolvedQuantity quantity : procedure.quantities()) {
            QuantityBlock block = quantity.block();
            Rational waters = block.matter().map(At::value).map(Matter::formula).map(f -> f.waters()).orElse(Rational.ZERO);
            if (block.shownAs().isPresent() && waters.signum() > 0) {
                Pattern told = told(waters.toString());
                texts(procedure.procedure().source().body(), words -> tell(block, words, told, findings));
            }
        }
    }

    private static Pattern told(String waters) {
        String many = NUMBERS.containsKey(waters) ? Pattern.quote(waters) + "|" + NUMBERS.get(waters) : Pattern.quote(waters);
        String name = PREFIXES.containsKey(waters) ? "\\b(?:" + PREFIXES.get(waters) + ")-?h[yi]drat(?:es?|ed|os?|ad[oa]s?)\\b|" : "";
        return Pattern.compile(name + "\\bh[yi]drat(?:e|o) (?:with|of|con|de) (?:" + many + ")\\b|(?<![\\d.,])\\b(?:" + many
                + ") (?:waters|molecules of water|water molecules|mol of water|moles of water|aguas|mol[eé]culas de agua|moles de agua)\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** What students read: the text of the page and its cautions, not what other blocks hold for the teacher. */
    private static void texts(List<Part> parts, Consumer<Inline.Words> visit) {
        for (Part part : parts) {
            if (part instanceof TypedBlock block) {
                if (block.type().equals("caution")) {
                    block.fields().all().forEach(f -> f.lines().forEach(l -> visit.accept(new Inline.Words(l.text(), l.span()))));
                }
                continue;
            }
            if (part instanceof Part.Heading heading) {
                words(heading.inlines(), visit);
            } else if (part instanceof Part.Paragraph paragraph) {
                words(paragraph.inlines(), visit);
            } else if (part instanceof Part.Table table) {
                table.head().forEach(cell -> words(cell.inlines(), visit));
                table.rows().forEach(row -> row.forEach(cell -> words(cell.inlines(), visit)));
            } else {
                texts(part.parts(), visit);
            }
        }
    }

    private static void words(List<Inline> inlines, Consumer<Inline.Words> visit) {
        inlines.forEach(top -> Inline.walk(top, inline -> {
            if (inline instanceof Inline.Words words) {
                visit.accept(words);
            }
        }));
    }

    private static void tell(QuantityBlock block, Inline.Words words, Pattern told, Consumer<Finding> findings) {
        Matcher found = told.matcher(words.text());
        while (found.find()) {
            boolean verbatim = words.span().text().equals(words.text());
            findings.accept(new PageFinding.HydrateNamed(found.group(), block.name(), block.shownAs().orElseThrow(),
                    verbatim ? words.span().part(found.start(), found.end()) : words.span()));
        }
    }
}
