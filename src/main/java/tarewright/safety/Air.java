package tarewright.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Constants;
import tarewright.chemistry.Provenance;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Unit;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;

/**
 * What escapes into the room. The worst case is taken: everything at once, evenly mixed, ideal gas, no ventilation, nothing
 * dissolved. Near the opening the air holds far more than any of these figures.
 */
public final class Air {
    private static final Unit PPM = unit("ppm");
    private static final Unit CUBIC_METRE = unit("m3");
    /** Around one face, m³: the breathing zone that this reckoning takes; common practice, no source. */
    private static final double FACE = 1;
    /** Per cent of the lower flammable limit at which action starts, as in the IDLH values marked 10 % LEL. */
    private static final double SHARE_OF_FLAMMABLE = 0.1;
    private static final double PPM_PER_PERCENT = 1e4;
    /** Share of oxygen in dry air. */
    private static final double OXYGEN = 0.209;
    private static final Provenance OXYGEN_LIMITS = new Provenance("29 CFR 1910.146(b): below 19.5 %, above 23.5 % oxygen",
            Confidence.MEMORY);

    private final Rulebook rules;
    private final Classification classification;

    public Air(Rulebook rules) {
        this.rules = rules;
        this.classification = new Classification(rules);
    }

    public AirEstimate of(Release release) {
        Part part = new Part(release.gas(), release.formula(), Content.pure());
        Verdict hazards = classification.of(Matter.of(release.gas(), Form.GAS, List.of(part)));
        Optional<SubstanceHazards> row = rules.substances().find(part, Form.GAS, 100);
        Optional<GasLimits> limits = row.flatMap(r -> rules.gases().stream()
                .filter(g -> g.substance().equals(r.id())).findFirst());
        Figure volume = Figure.of(Symbol.ofName("V", release.gas()), CUBIC_METRE, new Step.Product(1, List.of(
                new Step.Power(release.moles(), 1), new Step.Power(gasConstant(), 1), new Step.Power(release.temperature(), 1),
                new Step.Power(release.pressure(), -1))));
        Optional<Figure> one = release.room().map(room -> share(release, volume, room));
        Optional<Figure> all = one.map(o -> Figure.of(Symbol.ofName("\u03c6", release.gas()), PPM,
                new Step.Product(1, List.of(new Step.Power(release.vessels(), 1), new Step.Power(o, 1)))));
        Figure face = share(release, volume, Figure.given(Symbol.words("air around a face"), CUBIC_METRE, FACE,
                new Origin.Circumstance("air around a face")));
        List<LimitCheck> checks = new ArrayList<>();
        limits.ifPresent(l -> {
            check(LimitCheck.Scene.AROUND_FACE, face, l, checks);
            one.ifPresent(o -> check(LimitCheck.Scene.ONE_VESSEL, o, l, checks));
            all.ifPresent(a -> check(LimitCheck.Scene.ALL_VESSELS, a, l, checks));
        });
        all.ifPresent(a -> oxygen(a, hazards, checks));
        OptionalDouble molarMass = row.map(SubstanceHazards::molarMass).orElse(OptionalDouble.empty());
        OptionalDouble density = molarMass.isEmpty() ? molarMass
                : OptionalDouble.of(molarMass.getAsDouble() / 1000 / Constants.AIR_MOLAR_MASS.value());
        return new AirEstimate(release, hazards, limits, one, all, face, density, checks, reasons(hazards, checks));
    }

    private static Figure share(Release release, Figure volume, Figure into) {
        return Figure.of(Symbol.ofName("\u03c6", release.gas()), PPM,
                new Step.Product(1, List.of(new Step.Power(volume, 1), new Step.Power(into, -1))));
    }

    private static void check(LimitCheck.Scene scene, Figure share, GasLimits limits, List<LimitCheck> into) {
        boolean breath = scene == LimitCheck.Scene.AROUND_FACE;
        if (!breath) {
            limits.strictestAverage().ifPresent(l -> add(scene, LimitCheck.Kind.AVERAGE, l, share, limits, into));
        }
        if (limits.strictestShort().isPresent()) {
            add(scene, LimitCheck.Kind.SHORT_TERM, limits.strictestShort().getAsDouble(), share, limits, into);
        } else if (breath) {
            limits.strictestAverage().ifPresent(l -> add(scene, LimitCheck.Kind.AVERAGE_AS_SHORT_TERM, l, share, limits, into));
        }
        limits.dangerous().ifPresent(l -> add(scene, LimitCheck.Kind.DANGEROUS, l, share, limits, into));
        limits.lowerFlammable().ifPresent(l -> add(scene, LimitCheck.Kind.TENTH_OF_FLAMMABLE,
                l * PPM_PER_PERCENT * SHARE_OF_FLAMMABLE, share, limits, into));
    }

    private static void add(LimitCheck.Scene scene, LimitCheck.Kind kind, double limit, Figure share, GasLimits limits,
            List<LimitCheck> into) {
        into.add(new LimitCheck(scene, kind, limit, share.shownValue(), limits.provenance()));
    }

    private static void oxygen(Figure all, Verdict hazards, List<LimitCheck> checks) {
        boolean oxygen = hazards.rows().stream().anyMatch(r -> r.id().equals("oxygen"));
        double limit = oxygen ? (0.235 - OXYGEN) / (1 - OXYGEN) * 1e6 : (1 - 0.195 / OXYGEN) * 1e6;
        checks.add(new LimitCheck(LimitCheck.Scene.ALL_VESSELS,
                oxygen ? LimitCheck.Kind.TOO_MUCH_OXYGEN : LimitCheck.Kind.TOO_LITTLE_OXYGEN, limit, all.shownValue(),
                OXYGEN_LIMITS));
    }

    private static List<HoodReason> reasons(Verdict hazards, List<LimitCheck> checks) {
        List<HoodReason> reasons = new ArrayList<>();
        if (!hazards.known()) {
            reasons.add(new HoodReason(HoodReason.Why.NOT_KNOWN, List.of(), Optional.empty()));
        }
        List<String> toxic = List.of("H330", "H331").stream().filter(hazards::has).toList();
        if (!toxic.isEmpty()) {
            reasons.add(new HoodReason(HoodReason.Why.TOXIC_IF_INHALED, toxic, Optional.empty()));
        }
        for (LimitCheck check : checks) {
            if (check.over()) {
                reasons.add(new HoodReason(check.scene() == LimitCheck.Scene.AROUND_FACE ? HoodReason.Why.OVER_LIMIT_AROUND_FACE
                        : HoodReason.Why.OVER_LIMIT_IN_ROOM, List.of(), Optional.of(check)));
            }
        }
        return reasons;
    }

    /**
     * Why something that is handled, not made, demands a hood: it is fatal or toxic if inhaled and can get into the air. A
     * compact solid and a precipitate under water cannot.
     */
    public static List<HoodReason> handling(Verdict verdict) {
        List<String> toxic = List.of("H330", "H331").stream().filter(verdict::has).toList();
        Form form = verdict.matter().form();
        return toxic.isEmpty() || form == Form.MASSIVE || form == Form.SLURRY ? List.of()
                : List.of(new HoodReason(HoodReason.Why.TOXIC_IF_INHALED, toxic, Optional.empty()));
    }

    static Figure gasConstant() {
        return Figure.given(Symbol.alone("R"), unit(Constants.GAS_CONSTANT.unit()), Constants.GAS_CONSTANT.value(),
                new Origin.Constant(Constants.GAS_CONSTANT.provenance().source()));
    }

    static Unit unit(String symbol) {
        if (Units.parse(symbol) instanceof UnitResult.Ok ok) {
            return ok.unit();
        }
        throw new IllegalStateException(symbol);
    }
}
