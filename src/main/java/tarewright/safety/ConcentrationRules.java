package tarewright.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tarewright.chemistry.Provenance;

/**
 * Health and environment by concentration limits. A substance's own limit stands before the generic one (CLP Article 10); where
 * shares add up, each is taken of the limit that holds for its substance. The cut-off below which Annex I lets an ingredient be
 * ignored is not used: every share counts.
 */
final class ConcentrationRules {
    private final Map<String, List<GenericLimit>> tiers = new LinkedHashMap<>();

    ConcentrationRules(List<GenericLimit> rows) {
        rows.forEach(row -> tiers.computeIfAbsent(row.tier(), t -> new ArrayList<>()).add(row));
    }

    /** The limit that one substance has in a tier. */
    private record Limit(double percent, HazardClass gives, Assigned.Ground ground, String clause, Provenance provenance) {
        /**
         * The published statement where both limits are reached: lead powder has a limit of its own for the unborn child alone,
         * while its published statement names fertility too.
         */
        Limit inTheWordsOf(Limit generic, double of) {
            boolean both = generic.gives().severity() == gives.severity()
                    && Limits.reached(of, Math.max(percent, generic.percent()));
            return both ? new Limit(percent, generic.gives(), ground, clause, provenance) : this;
        }
    }

    void apply(List<Dose> doses, Dose.Level level, Severest into) {
        for (List<GenericLimit> tier : tiers.values()) {
            if (tier.get(0).sum()) {
                sum(tier, doses, level, into);
            } else {
                for (Dose dose : doses) {
                    sum(tier, List.of(dose), level, into);
                }
            }
        }
    }

    private static void sum(List<GenericLimit> tier, List<Dose> doses, Dose.Level level, Severest into) {
        double shares = 0;
        List<String> due = new ArrayList<>();
        Limit first = null;
        for (Dose dose : doses) {
            Limit limit = limit(tier, dose.row(), dose.at(level));
            if (limit == null || dose.at(level) <= 0) {
                continue;
            }
            shares += dose.at(level) / limit.percent();
            due.add(dose.row().name());
            first = first == null || limit.percent() < first.percent() ? limit : first;
        }
        if (first != null && Limits.reached(shares, 1)) {
            into.add(new Assigned(first.gives(), first.ground(), OptionalDouble.of(first.percent()), due, first.clause(),
                    first.provenance()));
        }
    }

    /** The limit of a substance in a tier, or null if it never brings a mixture there. */
    private static Limit limit(List<GenericLimit> tier, SubstanceHazards row, double percent) {
        HazardClass target = tier.get(0).gives();
        Limit specific = specific(target, row);
        Limit generic = generic(tier, row);
        if (ownLimitsRule(target, row)) {
            return specific != null && generic != null ? specific.inTheWordsOf(generic, percent) : specific;
        }
        if (specific == null || generic == null) {
            return specific == null ? generic : specific;
        }
        return specific.percent() < generic.percent() && !Limits.reached(percent, generic.percent()) ? specific : generic;
    }

    private static Limit specific(HazardClass target, SubstanceHazards row) {
        boolean eye = target.endpoint() == Endpoint.EYE && hasOwn(row, Endpoint.EYE);
        Limit best = null;
        for (SpecificLimit own : row.limits()) {
            if (own.gives().isEmpty()) {
                continue;
            }
            HazardClass gives = own.gives().get();
            boolean same = gives.endpoint() == target.endpoint() && gives.severity() >= target.severity();
            boolean corrosive = eye && gives.name().equals("Skin Corr.");
            if ((same || corrosive) && (best == null || own.fromPercent() < best.percent())) {
                HazardClass result = corrosive || !target.code().equals(GenericLimit.OWN) ? target : gives;
                best = new Limit(own.fromPercent(), result, Assigned.Ground.SPECIFIC_LIMIT, "CLP Annex VI Table 3",
                        own.provenance());
            }
        }
        return best;
    }

    private static boolean hasOwn(SubstanceHazards row, Endpoint endpoint) {
        return row.limits().stream().anyMatch(l -> l.gives().isPresent() && l.gives().get().endpoint() == endpoint);
    }

    /**
     * Whether the substance's own limits leave no room for the generic one. For eyes any limit of its own does, since corrosion
     * of the skin counts among them. For another class, limits of that very class do if they reach as far as the substance's own
     * category: lead compounds have a limit for suspected harm to fertility, which says nothing of the proven harm to the unborn
     * child.
     */
    private static boolean ownLimitsRule(HazardClass target, SubstanceHazards row) {
        if (target.endpoint() == Endpoint.EYE) {
            return hasOwn(row, Endpoint.EYE);
        }
        int published = row.classes().stream().filter(c -> c.name().equals(target.name()) && c.endpoint() == target.endpoint())
                .mapToInt(HazardClass::severity).max().orElse(0);
        return row.limits().stream().flatMap(l -> l.gives().stream())
                .anyMatch(g -> g.name().equals(target.name()) && g.endpoint() == target.endpoint() && g.severity() >= published);
    }

    private static Limit generic(List<GenericLimit> tier, SubstanceHazards row) {
        Limit best = null;
        for (GenericLimit generic : tier) {
            for (HazardClass ingredient : row.classes()) {
                double percent = generic.limitPercent() / row.mFactor(generic.mFactor());
                if (generic.takes(ingredient) && (best == null || percent < best.percent())) {
                    HazardClass gives = generic.gives().code().equals(GenericLimit.OWN)
                            ? new HazardClass(generic.gives().name(), generic.gives().category(), ingredient.code())
                            : generic.gives();
                    best = new Limit(percent, gives, Assigned.Ground.GENERIC_LIMIT, generic.clause(), generic.provenance());
                }
            }
        }
        return best;
    }
}
