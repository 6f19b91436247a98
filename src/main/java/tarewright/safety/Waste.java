package tarewright.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.Provenance;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;

/** What must not go to the sink, where it goes instead, and how to neutralise it. */
public final class Waste {
    /** From these acid frees a toxic gas. */
    private static final Set<String> KEEP_ALKALINE = Set.of("hypochlorite", "sulfide", "cyanide", "nitrite",
            "sulfite-thiosulfate",
            "thiosulfate", "hexacyanoferrate", "thiocyanate");
    /** Insoluble enough not to count as metal waste, though the sink is closed to solids all the same. */
    private static final Set<String> INERT = Set.of("barium-sulfate");

    private final Rulebook rules;
    private final Classification classification;

    public Waste(Rulebook rules) {
        this.rules = rules;
        this.classification = new Classification(rules);
    }

    /** @param with the neutraliser that the author names, by id or name; the first that fits if empty or not fit */
    public WasteAdvice of(Leftover left, Optional<String> with) {
        Verdict hazards = classification.ofWaste(left.matter());
        Set<String> groups = groups(hazards);
        List<WasteAdvice.Reason> reasons = new ArrayList<>();
        for (WasteRule rule : rules.waste().rules()) {
            List<String> found = found(rule, left.matter(), hazards, groups);
            if (!found.isEmpty() || rule.kind() == WasteRule.Kind.REST && reasons.isEmpty()) {
                reasons.add(new WasteAdvice.Reason(rule, found));
            }
        }
        boolean never = reasons.stream().anyMatch(r -> r.rule().sink() == WasteRule.Sink.NEVER);
        Set<String> containers = new LinkedHashSet<>();
        reasons.stream().filter(r -> !never || r.rule().sink() == WasteRule.Sink.NEVER)
                .forEach(r -> r.rule().container().ifPresent(containers::add));
        boolean keepAlkaline = groups.stream().anyMatch(KEEP_ALKALINE::contains);
        return new WasteAdvice(left, hazards, never ? WasteRule.Sink.NEVER : WasteRule.Sink.LOCAL, reasons,
                List.copyOf(containers),
                recipe(left, with, keepAlkaline), keepAlkaline);
    }

    private Set<String> groups(Verdict hazards) {
        Set<String> groups = new LinkedHashSet<>();
        for (SubstanceHazards row : hazards.rows()) {
            rules.reactive().members().stream().filter(m -> m.substance().equals(row.id())).forEach(m -> groups.add(m.group()));
        }
        return groups;
    }

    private List<String> found(WasteRule rule, Matter matter, Verdict hazards, Set<String> groups) {
        return switch (rule.kind()) {
            case UNKNOWN -> hazards instanceof Unknown unknown ? unknown.parts() : List.of();
            case ELEMENT -> {
                Set<String> elements = elements(hazards);
                yield rule.values().stream().filter(elements::contains).toList();
            }
            case CODE -> rule.values().stream().filter(hazards::has).toList();
            case GROUP -> rule.values().stream().filter(groups::contains).toList();
            case FORM -> {
                String form = matter.form().name().toLowerCase(Locale.ROOT);
                yield rule.values().stream().filter(form::equals).toList();
            }
            case PH_BELOW -> rule.values().stream()
                    .filter(v -> matter.pH().isPresent() && matter.pH().getAsDouble() < Double.parseDouble(v)).toList();
            case PH_ABOVE -> rule.values().stream()
                    .filter(v -> matter.pH().isPresent() && matter.pH().getAsDouble() > Double.parseDouble(v)).toList();
            case WITHOUT_PH -> matter.pH().isPresent() ? List.of() : rule.values().stream().filter(groups::contains).toList();
            case REST -> List.of();
        };
    }

    /** The elements in the first formula of every substance, and in what stands for one where the tables do not know it. */
    private static Set<String> elements(Verdict hazards) {
        Set<String> elements = new LinkedHashSet<>();
        hazards.rows().stream().filter(r -> !INERT.contains(r.id()) && !r.formulas().isEmpty())
                .forEach(r -> symbols(r.formulas().get(0), elements));
        if (hazards instanceof Unknown unknown) {
            for (Part part : hazards.matter().parts()) {
                if (unknown.parts().contains(part.substance())) {
                    symbols(part.formula().orElse(part.substance()), elements);
                }
            }
        }
        return elements;
    }

    private static void symbols(String formula, Set<String> into) {
        for (int i = 0; i < formula.length(); i++) {
            if (Character.isUpperCase(formula.charAt(i))) {
                boolean two = i + 1 < formula.length() && Character.isLowerCase(formula.charAt(i + 1));
                into.add(formula.substring(i, i + (two ? 2 : 1)));
            }
        }
    }

    private Optional<WasteAdvice.Recipe> recipe(Leftover left, Optional<String> with, boolean keepAlkaline) {
        boolean acid = left.acid().filter(a -> a.value() > 0).isPresent();
        boolean alkali = left.alkali().filter(a -> a.value() > 0).isPresent();
        if (acid == alkali || alkali && keepAlkaline) {
            return Optional.empty();
        }
        Neutraliser.Against against = acid ? Neutraliser.Against.ACID : Neutraliser.Against.ALKALI;
        Optional<String> wanted = with.flatMap(w -> rules.substances().find(Part.of(w, Content.pure()), Form.SOLID, 100))
                .map(SubstanceHazards::id);
        List<Neutraliser> fit = rules.waste().neutralisers().stream().filter(n -> n.against() == against).toList();
        return fit.stream().filter(n -> wanted.filter(n.substance()::equals).isPresent()).findFirst().or(() -> fit.stream()
                .findFirst())
                .map(n -> recipe(n, (acid ? left.acid() : left.alkali()).orElseThrow()));
    }

    private static WasteAdvice.Recipe recipe(Neutraliser with, Figure amount) {
        Provenance provenance = with.provenance();
        Figure molarMass = Figure.given(Symbol.ofName("M", with.substance()), Air.unit("g/mol"), with.molarMass() / 1000,
                new Origin.Table(provenance.source(), true));
        Figure mass = Figure.of(Symbol.ofName("m", with.substance()), Air.unit("g"), new Step.Product(1 / with.equivalents(),
                List.of(new Step.Power(amount, 1), new Step.Power(molarMass, 1))));
        Optional<Figure> gas = with.gasPerEquivalent() == 0 ? Optional.empty()
                : Optional.of(Figure.of(Symbol.ofFormula("n", "CO2"), amount.unit(),
                        new Step.Product(with.gasPerEquivalent(), List.of(new Step.Power(amount, 1)))));
        return new WasteAdvice.Recipe(with, mass, gas);
    }
}
