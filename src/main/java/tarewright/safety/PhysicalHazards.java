package tarewright.safety;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Fire, oxidisers and corrosion of metals. They cannot be worked out from percentages; what the tables have are a substance's own
 * limits and a few flash points. Otherwise the class of the undiluted substance is kept, except where water plainly takes it
 * away, which is then said.
 */
final class PhysicalHazards {
    /**
     * From here on, per cent by mass, a liquid without flash points, or what corrodes metals, keeps its class in water:
     * judgement.
     */
    private static final double KEPT_FROM = 1;
    /** From here on a solution of an oxidising solid is still treated as oxidising: judgement. */
    private static final double OXIDISER_KEPT_FROM = 50;
    private static final String JUDGED = "judgement: no rule";

    private final List<FlammableBand> bands;

    PhysicalHazards(List<FlammableBand> bands) {
        this.bands = bands;
    }

    void apply(List<Dose> doses, Form form, Dose.Level level, Severest into, List<Remark> remarks) {
        for (Dose dose : doses) {
            if (dose.at(level) <= 0) {
                continue;
            }
            for (HazardClass hazard : dose.row().classes()) {
                if (hazard.endpoint().physical() && !ownLimits(dose, hazard, level, into)
                        && !flashPoints(dose, hazard, level, into)) {
                    keep(dose, hazard, form, level, into, remarks);
                }
            }
        }
    }

    private static boolean ownLimits(Dose dose, HazardClass hazard, Dose.Level level, Severest into) {
        boolean any = false;
        for (SpecificLimit limit : dose.row().limits()) {
            if (limit.gives().filter(g -> g.endpoint() == hazard.endpoint()).isPresent()) {
                any = true;
                if (limit.reached(dose.at(level))) {
                    into.add(new Assigned(limit.gives().get(), Assigned.Ground.SPECIFIC_LIMIT,
                            OptionalDouble.of(limit.fromPercent()),
                            List.of(dose.row().name()), "CLP Annex VI Table 3", limit.provenance()));
                }
            }
        }
        return any;
    }

    private boolean flashPoints(Dose dose, HazardClass hazard, Dose.Level level, Severest into) {
        boolean any = false;
        for (FlammableBand band : bands) {
            if (band.substance().equals(dose.row().id()) && band.gives().endpoint() == hazard.endpoint()) {
                any = true;
                if (Limits.reached(dose.at(level), band.fromPercent())) {
                    into.add(new Assigned(band.gives(), Assigned.Ground.FLASH_POINT, OptionalDouble.of(band.fromPercent()),
                            List.of(dose.row().name()), "CLP Annex I Table 2.6.1", band.provenance()));
                }
            }
        }
        return any;
    }

    private static void keep(Dose dose, HazardClass hazard, Form form, Dose.Level level, Severest into, List<Remark> remarks) {
        double percent = dose.at(level);
        boolean diluted = form == Form.SOLUTION || form == Form.LIQUID && !Limits.reached(percent, 100);
        if (!diluted) {
            into.add(new Assigned(hazard, Assigned.Ground.UNDILUTED, OptionalDouble.empty(), List.of(dose.row().name()),
                    "published class",
                    dose.row().listing().provenance()));
            return;
        }
        double from = switch (hazard.endpoint()) {
            case FLAMMABLE_LIQUID, METAL_CORROSION, OXIDISING_LIQUID -> KEPT_FROM;
            case OXIDISING_SOLID -> OXIDISER_KEPT_FROM;
            default -> form == Form.SOLUTION ? Double.POSITIVE_INFINITY : 0;
        };
        if (Limits.reached(percent, from)) {
            into.add(new Assigned(hazard, Assigned.Ground.JUDGEMENT, OptionalDouble.of(from), List.of(dose.row().name()), JUDGED,
                    dose.row().listing().provenance()));
            if (hazard.endpoint() == Endpoint.FLAMMABLE_LIQUID) {
                remarks.add(Remark.of(Remark.About.FLASH_POINT_UNKNOWN, dose.row().name(), hazard.code()));
            }
        } else if (from > KEPT_FROM) {
            remarks.add(Remark.of(Remark.About.NOT_CARRIED_INTO_WATER, dose.row().name(), hazard.code()));
        }
    }
}
