package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Substance;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.resolve.Meaning.Circumstance;
import tarewright.tables.ReferenceTables;
import tarewright.text.Spelling;

/** Finds out what the names of a procedure mean. A block's own name goes before any reading of it as {@code property of name}. */
final class Names {
    /** What else teachers call a figure (common practice, no source), and what we call it. */
    private static final Map<String, List<String>> OTHER_WORDS = Map.ofEntries(Map.entry("weight", List.of("mass")), Map.entry("amount", List.of("moles", "mass", "volume")),
            Map.entry("amount of substance", List.of("moles")), Map.entry("mol", List.of("moles")), Map.entry("number of moles", List.of("moles")),
            Map.entry("concentration", List.of("strength")), Map.entry("conc", List.of("strength")), Map.entry("molarity", List.of("strength")),
            Map.entry("molecular weight", List.of("molar mass")), Map.entry("molecular mass", List.of("molar mass")),
            Map.entry("formula mass", List.of("molar mass")), Map.entry("molar weight", List.of("molar mass")), Map.entry("vol", List.of("volume")),
            Map.entry("total", List.of("class total")), Map.entry("name", List.of("label")), Map.entry("enthalpy", List.of("heat")),
            Map.entry("temperature change", List.of("temperature rise")), Map.entry("leftover", List.of("left over")));

    private final Procedure procedure;
    private final ReferenceTables tables;

    Names(Procedure procedure, ReferenceTables tables) {
        this.procedure = procedure;
        this.tables = tables;
    }

    /** The meaning of a reference's text, without braces. */
    Meaning meaning(String text) {
        if (text.startsWith("blank ")) {
            return wrap(text, "blank ");
        }
        if (text.startsWith("working of ")) {
            return wrap(text, "working of ");
        }
        if (text.startsWith("formula ")) {
            return formula(text, "formula ".length()).orElseGet(() -> bad(text, "formula ".length()));
        }
        return block(text).or(() -> fixed(text)).or(() -> ofSomething(text)).orElseGet(() -> new Meaning.Unknown(near(text)));
    }

    private Meaning wrap(String text, String before) {
        Meaning inner = meaning(text.substring(before.length()));
        if (inner instanceof Meaning.BadFormula bad) {
            return new Meaning.BadFormula(bad.trouble(), before.length() + bad.offset());
        }
        if (inner instanceof Meaning.Unknown) {
            return inner;
        }
        return before.startsWith("blank") ? new Meaning.Blank(inner) : new Meaning.Working(inner);
    }

    private Optional<Meaning> block(String name) {
        Optional<Meaning> quantity = procedure.quantity(name).map(Meaning.Itself::new);
        return quantity.or(() -> procedure.value(name).map(Meaning.Valued::new)).or(() -> procedure.reading(name).map(Meaning.ReadOff::new))
                .or(() -> procedure.reaction(name).map(Meaning.Equation::new));
    }

    private static Optional<Meaning> fixed(String text) {
        switch (text) {
            case "groups":
                return Optional.of(new Meaning.Groups());
            case "section":
                return Optional.of(new Meaning.Section());
            default:
                if (text.endsWith(" of room")) {
                    String what = text.substring(0, text.length() - " of room".length()).toUpperCase(Locale.ROOT);
                    return List.of(Circumstance.values()).stream().filter(c -> c.name().equals(what)).findFirst().map(Meaning.OfRoom::new);
                }
                return Optional.empty();
        }
    }

    private Optional<Meaning> ofSomething(String text) {
        for (int of = text.indexOf(" of "); of >= 0; of = text.indexOf(" of ", of + 1)) {
            Optional<Meaning> found = of(text.substring(0, of), text.substring(of + 4), text, of + 4);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Meaning> of(String property, String name, String text, int offset) {
        switch (property) {
            case "label":
                return procedure.quantity(name).map(Meaning.Label::new);
            case "ratio":
                int to = name.indexOf(" to ");
                return to < 0 ? Optional.empty() : procedure.quantity(name.substring(0, to))
                        .flatMap(a -> procedure.quantity(name.substring(to + 4)).map(b -> new Meaning.Ratio(a, b)));
            case "heat":
                return procedure.reaction(name).map(r -> new Meaning.OfReaction(Meaning.Thermal.HEAT, r));
            case "temperature rise":
                return procedure.reaction(name).map(r -> new Meaning.OfReaction(Meaning.Thermal.TEMPERATURE_RISE, r));
            case "molar mass":
                Optional<Meaning> block = procedure.quantity(name).map(b -> new Meaning.Of(Property.MOLAR_MASS, b));
                return block.or(() -> formula(text, offset).map(f -> f instanceof Meaning.FormulaText t ? new Meaning.MolarMass(t.formula()) : f))
                        .or(() -> looksLikeFormula(name) ? Optional.of(bad(text, offset)) : Optional.empty());
            default:
                return Property.of(property).flatMap(p -> procedure.quantity(name).map(b -> new Meaning.Of(p, b)));
        }
    }

    private static boolean looksLikeFormula(String name) {
        return !name.contains(" ") && name.length() < 40;
    }

    private Optional<Meaning> formula(String text, int from) {
        String name = text.substring(from).strip();
        Optional<Formula> named = tables.substances().named(name).flatMap(Substance::formula);
        return named.or(() -> Formula.parse(name) instanceof FormulaResult.Ok ok ? Optional.of(ok.formula()) : Optional.empty())
                .map(Meaning.FormulaText::new);
    }

    private static Meaning bad(String text, int from) {
        return new Meaning.BadFormula(((FormulaResult.Bad) Formula.parse(text.substring(from))).trouble(), from);
    }

    /** Names that would do in the place of one that does not. */
    private List<String> near(String text) {
        List<String> blocks = allNames();
        List<String> properties = new ArrayList<>(List.of("label", "ratio", "heat", "temperature rise", "working"));
        List.of(Property.values()).forEach(p -> properties.add(p.words()));
        for (int of = text.indexOf(" of "); of > 0; of = text.indexOf(" of ", of + 1)) {
            String property = text.substring(0, of);
            String name = text.substring(of + 4);
            if (blocks.contains(name)) {
                List<String> meant = OTHER_WORDS.getOrDefault(property.toLowerCase(Locale.ROOT), Spelling.near(property, properties));
                return meant.stream().map(p -> p + " of " + name).toList();
            }
            if (properties.contains(property)) {
                return Spelling.near(name, blocks).stream().map(b -> property + " of " + b).toList();
            }
        }
        return Spelling.near(text, blocks);
    }

    /** Every block's name. */
    List<String> allNames() {
        List<String> all = new ArrayList<>();
        procedure.quantities().forEach(q -> all.add(q.name()));
        procedure.values().forEach(v -> all.add(v.name()));
        procedure.readings().forEach(r -> all.add(r.name()));
        procedure.reactions().forEach(r -> all.add(r.name()));
        return all;
    }
}
