package tarewright.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;

/** What must not meet, among everything that one procedure, or several in one lesson, puts on the bench. */
public final class Incompatible {
    private static final ReactiveMember AS_WATER = new ReactiveMember(ReactiveTable.WATER, ReactiveTable.WATER, Set.of(), 0, 100,
            OptionalDouble.empty(), new Provenance("what the parts of a solution leave is water", Confidence.MEMORY));

    private final Rulebook rules;

    public Incompatible(Rulebook rules) {
        this.rules = rules;
    }

    /** A part of a matter as a member of a group. */
    private record Member(Matter matter, String substance, String part, double percent, ReactiveMember as) {
    }

    /**
     * The clashes among these matters, gravest first. Of several rules for the same two matters and the same substances the
     * gravest stands. What must not meet water is named once, with the first matter that holds any.
     *
     * @param going what is going on beside mixing: heating, a flame
     * @param intended pairs that the procedure means to bring together: of these only what a flame does to them is told
     */
    public List<Clash> among(List<Matter> matters, Set<PairRule.Setting> going, List<Together> intended) {
        return all(matters, going, intended).stream().filter(c -> c.severity() != PairRule.Severity.INFO).toList();
    }

    /** As {@link #among}, with what is only good to know. */
    public List<Clash> all(List<Matter> matters, Set<PairRule.Setting> going, List<Together> intended) {
        List<List<Member>> members = matters.stream().map(this::members).toList();
        List<Clash> clashes = new ArrayList<>();
        for (int i = 0; i < matters.size(); i++) {
            for (int j = i; j < matters.size(); j++) {
                Matter a = matters.get(i);
                Matter b = matters.get(j);
                boolean meant = intended.stream().anyMatch(t -> t.is(a, b));
                clashes.addAll(between(members.get(i), members.get(j), i == j, meant ? flameOf(going) : settings(going)));
            }
        }
        clashes.sort(Comparator.comparing(Clash::severity).reversed());
        Set<String> withWater = new HashSet<>();
        clashes.removeIf(c -> c.secondPart().equals(ReactiveTable.WATER)
                && !withWater.add(c.first().name() + "/" + c.rule().id()));
        return clashes;
    }

    private static Set<PairRule.Setting> settings(Set<PairRule.Setting> going) {
        Set<PairRule.Setting> all = EnumSet.of(PairRule.Setting.ANY);
        all.addAll(going);
        return all;
    }

    /** Who means two things to react does not thereby mean what they set free to meet a flame. */
    private static Set<PairRule.Setting> flameOf(Set<PairRule.Setting> going) {
        Set<PairRule.Setting> flame = EnumSet.noneOf(PairRule.Setting.class);
        going.stream().filter(g -> g == PairRule.Setting.NEAR_FLAME).forEach(flame::add);
        return flame;
    }

    /** @param settings of the rules to look at */
    private List<Clash> between(List<Member> these, List<Member> those, boolean within, Set<PairRule.Setting> settings) {
        Map<String, Clash> gravest = new LinkedHashMap<>();
        for (PairRule rule : rules.reactive().pairs()) {
            if (!settings.contains(rule.setting())) {
                continue;
            }
            match(rule, these, those, within, gravest);
            if (!within) {
                match(rule, those, these, false, gravest);
            }
        }
        return List.copyOf(gravest.values());
    }

    private static void match(PairRule rule, List<Member> first, List<Member> second, boolean within, Map<String, Clash> into) {
        for (Member a : first) {
            if (!a.as().group().equals(rule.groupA()) || !rule.needA().holds(a.matter().form(), a.percent(), a.as())) {
                continue;
            }
            for (Member b : second) {
                boolean mixedAlready = within && (a.substance().equals(b.substance())
                        || b.as().group().equals(ReactiveTable.WATER));
                if (b.as().group().equals(rule.groupB()) && !mixedAlready
                        && rule.needB().holds(b.matter().form(), b.percent(), b.as())) {
                    Clash clash = new Clash(a.matter(), b.matter(), a.part(), b.part(), rule);
                    String key = a.substance().compareTo(b.substance()) < 0 ? a.substance() + "+" + b.substance()
                            : b.substance() + "+" + a.substance();
                    into.merge(key, clash, (x, y) -> y.severity().compareTo(x.severity()) > 0 ? y : x);
                }
            }
        }
    }

    private List<Member> members(Matter matter) {
        List<Member> members = new ArrayList<>();
        boolean wet = matter.form() == Form.SOLUTION || matter.form() == Form.SLURRY;
        for (Part part : matter.parts()) {
            Optional<Dose> dose = Dose.of(part, matter.form(), rules.substances());
            if (dose.isPresent()) {
                SubstanceHazards row = dose.get().row();
                wet |= row.id().equals(ReactiveTable.WATER);
                groups(row, matter.form(), dose.get())
                        .forEach(m -> members.add(new Member(matter, row.id(), row.name(), dose.get().high(), m)));
            }
        }
        if (wet) {
            members.add(new Member(matter, ReactiveTable.WATER, ReactiveTable.WATER, 100, AS_WATER));
        }
        return members;
    }

    /** The groups of a substance; where it has none, what acids or water free from it by its classification. */
    private List<ReactiveMember> groups(SubstanceHazards row, Form form, Dose dose) {
        List<ReactiveMember> of = new ArrayList<>(rules.reactive().members().stream()
                .filter(m -> m.substance().equals(row.id()) && m.belongs(form, dose.low(), dose.high())).toList());
        if (!of.isEmpty()) {
            return of;
        }
        if (row.supplemental().stream().anyMatch(Set.of("EUH031", "EUH032")::contains)) {
            of.add(group(row, ReactiveTable.LIBERATES_WITH_ACID));
        }
        if (row.classes().stream().anyMatch(c -> c.endpoint() == Endpoint.WATER_REACTIVE)) {
            of.add(group(row, ReactiveTable.WATER_REACTIVE));
        }
        return of;
    }

    private static ReactiveMember group(SubstanceHazards row, String group) {
        return new ReactiveMember(row.id(), group, Set.of(), 0, 100, OptionalDouble.empty(), row.listing().provenance());
    }
}
