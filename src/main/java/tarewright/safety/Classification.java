package tarewright.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;

/**
 * Classifies a matter at its strength: by the substance's own limits, else by generic ones, else as unknown. The strength's
 * uncertainty, two standard uncertainties, goes to the stricter side.
 */
public final class Classification {
    private static final double ACID = 2;
    private static final double ALKALINE = 11.5;
    private static final double NEUTRAL = 7;
    private static final double ESTIMATED = 0.2;

    private final Rulebook rules;
    private final ConcentrationRules concentration;
    private final AcuteToxicity acute;
    private final PhysicalHazards physical;
    private final SupplementalStatements supplemental;
    private final Labelling labelling;

    public Classification(Rulebook rules) {
        this.rules = rules;
        this.concentration = new ConcentrationRules(rules.genericLimits());
        this.acute = new AcuteToxicity(rules.acuteEstimates());
        this.physical = new PhysicalHazards(rules.flammableBands());
        this.supplemental = new SupplementalStatements(rules.supplementalLimits());
        this.labelling = new Labelling(rules);
    }

    /** What the label of the matter says. */
    public Verdict of(Matter matter) {
        return of(matter, false);
    }

    /**
     * What the label of waste says. It is no mixture that anybody tested, and what is in it varies: by CLP Annex I 3.2.3.1.2 a pH of 2 or less, or of 11.5
     * or more, makes it corrosive until something shows the opposite, and a limit for one of its parts does not. The pH is reckoned with concentrations for
     * activities: what lies within 0.2 of a limit goes to the stricter side (own rule).
     */
    public Verdict ofWaste(Matter matter) {
        return of(matter, true);
    }

    private static Matter stricter(Matter waste) {
        return waste.pH().isEmpty() ? waste : waste.atPH(waste.pH().getAsDouble() + (waste.pH().getAsDouble() < NEUTRAL ? -ESTIMATED : ESTIMATED));
    }

    private Verdict of(Matter matter, boolean waste) {
        List<Dose> doses = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        Set<Remark> remarks = new LinkedHashSet<>();
        for (Part part : matter.parts()) {
            Optional<Dose> dose = Dose.of(part, matter.form(), rules.substances());
            dose.ifPresentOrElse(d -> {
                doses.add(d);
                remark(d, remarks);
                ion(part).ifPresent(i -> remarks.add(Remark.of(Remark.About.ION, i, d.row().name())));
            }, () -> unknown.add(part.substance()));
        }
        List<Remark> found = new ArrayList<>();
        Matter judged = waste ? stricter(matter) : matter;
        Severest severest = classes(judged, doses, waste || !unknown.isEmpty(), Dose.Level.HIGH, found);
        List<Statement> euh = supplemental.of(doses, matter.form(), Dose.Level.HIGH, severest).stream()
                .map(s -> s.in(rules.statements())).toList();
        remarks.addAll(found);
        List<Assigned> assigned = severest.all();
        Classified classified = new Classified(matter, rules.ruleSet(), assigned, labelling.statements(assigned), euh,
                labelling.pictograms(assigned), labelling.signalWord(assigned), near(judged, doses, waste || !unknown.isEmpty(), severest),
                List.copyOf(remarks), doses.stream().map(Dose::row).distinct().toList());
        return unknown.isEmpty() ? classified : new Unknown(unknown, classified);
    }

    /** @param untested whether no limit of a part may stand against an extreme pH */
    private Severest classes(Matter matter, List<Dose> doses, boolean untested, Dose.Level level, List<Remark> remarks) {
        Severest severest = new Severest();
        concentration.apply(doses, level, severest);
        acute.apply(doses, matter.form(), level, severest, remarks);
        physical.apply(doses, matter.form(), level, severest, remarks);
        extremePH(matter, doses, untested, severest);
        return severest;
    }

    /** CLP Annex I 3.2.3.1.2: of a mixture whose parts are known only where neither a limit nor a published class speaks of skin or eyes. */
    private void extremePH(Matter matter, List<Dose> doses, boolean untested, Severest into) {
        if (matter.pH().isEmpty() || matter.pH().getAsDouble() > ACID && matter.pH().getAsDouble() < ALKALINE) {
            return;
        }
        boolean spoken = doses.stream().anyMatch(d -> d.at(Dose.Level.HIGH) > 0 && speaksOfSkinOrEyes(d.row()));
        if (untested || !spoken) {
            Provenance provenance = new Provenance("Reg (EC) 1272/2008 Annex I 3.2.3.1.2, read at reachonline.eu",
                    Confidence.READ);
            into.add(new Assigned(new HazardClass("Skin Corr.", "1", "H314"), Assigned.Ground.EXTREME_PH, OptionalDouble.empty(),
                    List.of(matter.name()), "CLP Annex I 3.2.3.1.2", provenance));
        }
    }

    private static boolean speaksOfSkinOrEyes(SubstanceHazards row) {
        return row.classes().stream().anyMatch(c -> c.endpoint() == Endpoint.SKIN || c.endpoint() == Endpoint.EYE)
                || row.limits().stream().flatMap(l -> l.gives().stream())
                        .anyMatch(c -> c.endpoint() == Endpoint.SKIN || c.endpoint() == Endpoint.EYE);
    }

    private List<NearLimit> near(Matter matter, List<Dose> doses, boolean untested, Severest high) {
        if (doses.stream().allMatch(d -> d.low() == d.high())) {
            return List.of();
        }
        Severest low = classes(matter, doses, untested, Dose.Level.LOW, new ArrayList<>());
        Severest best = classes(matter, doses, untested, Dose.Level.BEST, new ArrayList<>());
        List<NearLimit> near = new ArrayList<>();
        for (Assigned a : high.all()) {
            if (a.limitPercent().isEmpty() || sameOrWorse(low, a)) {
                continue;
            }
            doses.stream().filter(d -> a.due().contains(d.row().name()) && !d.unstated() && d.low() != d.high()).findFirst()
                    .ifPresent(d -> near.add(new NearLimit(a.hazard(), a.limitPercent().getAsDouble(), d.best(), d.high(),
                            !sameOrWorse(best, a))));
        }
        return near;
    }

    private static boolean sameOrWorse(Severest other, Assigned than) {
        return other.of(than.hazard().endpoint()).filter(o -> o.hazard().severity() >= than.hazard().severity()).isPresent();
    }

    private static Optional<String> ion(Part part) {
        return part.formula().or(() -> Optional.of(part.substance())).filter(f -> f.indexOf('^') > 0);
    }

    private static void remark(Dose dose, Set<Remark> remarks) {
        SubstanceHazards row = dose.row();
        SubstanceHazards.Listing listing = row.listing();
        if (dose.unstated()) {
            remarks.add(Remark.of(Remark.About.STRENGTH_UNSTATED, row.name()));
        }
        if (dose.estimated()) {
            remarks.add(Remark.of(Remark.About.STRENGTH_ESTIMATED, row.name()));
        }
        if (listing.minimum()) {
            remarks.add(Remark.of(Remark.About.MINIMUM_CLASSIFICATION, row.name()));
        }
        boolean aquatic = row.classes().stream().anyMatch(c -> c.endpoint() == Endpoint.AQUATIC_ACUTE && row.mAcute().isEmpty()
                || c.toString().startsWith("Aquatic Chronic 1") && row.mChronic().isEmpty());
        if (aquatic) {
            remarks.add(Remark.of(Remark.About.M_FACTOR_NOT_GIVEN, row.name()));
        }
        if (listing.basis() == Basis.SELF_CLASSIFIED || listing.basis() == Basis.ADDITIONS) {
            remarks.add(Remark.of(Remark.About.SELF_CLASSIFIED, row.name()));
        }
        if (listing.basis() == Basis.TEACHER) {
            remarks.add(Remark.of(Remark.About.TEACHERS_TABLE, row.name(), listing.provenance().source()));
        }
        if (listing.provenance().confidence() == Confidence.MEMORY) {
            remarks.add(Remark.of(Remark.About.FROM_MEMORY, row.name(), listing.fromMemory()));
        }
        if (!row.suppliersAdd().isEmpty()) {
            remarks.add(Remark.of(Remark.About.SUPPLIERS_ADD, row.name(), String.join(", ", row.suppliersAdd())));
        }
        if (row.restriction() != Restriction.NONE) {
            remarks.add(Remark.of(Remark.About.RESTRICTED, row.name(), row.restriction().name()));
        }
    }
}
