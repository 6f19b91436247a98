package tarewright.safety;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Acute toxicity of mixtures by the sum over estimates (CLP Annex I 3.1.3.6.1): 100 / ATE(mix) = Σ percentage / ATE. A printed
 * estimate is taken before the point estimate of the category. A solid is inhaled as dust, a liquid as vapour, unless the table
 * says otherwise. A gas in water has no estimate that could be summed: its category is kept from the generic cut-off of Table 1.1
 * on.
 */
final class AcuteToxicity {
    private static final double CUT_OFF_TOXIC = 0.1;
    private static final double CUT_OFF_HARMFUL = 1;

    private final Map<Route, List<AcuteEstimate>> bands = new EnumMap<>(Route.class);

    AcuteToxicity(List<AcuteEstimate> rows) {
        rows.forEach(row -> bands.computeIfAbsent(row.route(), r -> new ArrayList<>()).add(row));
    }

    void apply(List<Dose> doses, Form form, Dose.Level level, Severest into, List<Remark> remarks) {
        Map<Route, List<Dose>> byRoute = new EnumMap<>(Route.class);
        for (Dose dose : doses) {
            for (HazardClass hazard : dose.row().classes()) {
                if (!hazard.name().equals("Acute Tox.") || dose.at(level) <= 0) {
                    continue;
                }
                Route route = route(dose.row(), hazard);
                if (route == Route.GAS && form != Form.GAS && !dose.row().estimates().containsKey(Route.GAS)) {
                    dissolved(dose, hazard, level, into, remarks);
                } else {
                    byRoute.computeIfAbsent(route, r -> new ArrayList<>()).add(dose);
                }
            }
        }
        byRoute.forEach((route, those) -> sum(route, those, level, into));
    }

    private void sum(Route route, List<Dose> doses, Dose.Level level, Severest into) {
        if (doses.size() == 1 && Limits.reached(doses.get(0).at(level), 100) && !doses.get(0).row().estimates().containsKey(route)) {
            published(route, doses.get(0), into);
            return;
        }
        double sum = 0;
        List<String> due = new ArrayList<>();
        for (Dose dose : doses) {
            sum += dose.at(level) / estimate(route, dose.row());
            due.add(dose.row().name());
        }
        double mixture = 100 / sum;
        for (AcuteEstimate band : bands.getOrDefault(route, List.of())) {
            if (Limits.reached(band.upTo(), mixture)) {
                HazardClass hazard = new HazardClass("Acute Tox.", Integer.toString(band.category()), band.code());
                double alone = 100 * estimate(route, doses.get(0).row()) / band.upTo();
                into.add(new Assigned(hazard, Assigned.Ground.ACUTE_ESTIMATE,
                        alone <= 100 ? OptionalDouble.of(alone) : OptionalDouble.empty(), due, band.clause(), band.provenance()));
                return;
            }
        }
    }

    /** The undiluted substance keeps its class: some point estimates lie on the edge of the next category, so that a sum over one would make it worse than published. */
    private static void published(Route route, Dose dose, Severest into) {
        dose.row().classes().stream().filter(h -> h.name().equals("Acute Tox.") && h.endpoint() == route.endpoint())
                .forEach(h -> into.add(new Assigned(h, Assigned.Ground.UNDILUTED, OptionalDouble.empty(), List.of(dose.row().name()), "published class",
                        dose.row().listing().provenance())));
    }

    private static void dissolved(Dose dose, HazardClass hazard, Dose.Level level, Severest into, List<Remark> remarks) {
        double cutOff = hazard.category().equals("4") ? CUT_OFF_HARMFUL : CUT_OFF_TOXIC;
        if (Limits.reached(dose.at(level), cutOff)) {
            into.add(new Assigned(hazard, Assigned.Ground.JUDGEMENT, OptionalDouble.of(cutOff), List.of(dose.row().name()),
                    "CLP Annex I Table 1.1", dose.row().listing().provenance()));
            remarks.add(Remark.of(Remark.About.DISSOLVED_GAS, dose.row().name(), hazard.code()));
        }
    }

    private double estimate(Route route, SubstanceHazards row) {
        Double printed = row.estimates().get(route);
        return printed != null ? printed : point(route, row).orElseThrow(
                () -> new IllegalStateException("no estimate for " + row.id() + " by " + route));
    }

    private Optional<Double> point(Route route, SubstanceHazards row) {
        return row.classes().stream().filter(h -> h.name().equals("Acute Tox.") && h.endpoint() == route.endpoint())
                .flatMap(h -> bands.getOrDefault(route, List.of()).stream()
                        .filter(b -> h.category().equals(Integer.toString(b.category()))))
                .map(AcuteEstimate::pointEstimate).min(Double::compare);
    }

    private static Route route(SubstanceHazards row, HazardClass hazard) {
        return switch (hazard.endpoint()) {
            case SWALLOWED -> Route.ORAL;
            case ON_SKIN -> Route.DERMAL;
            default -> {
                for (Route printed : List.of(Route.GAS, Route.VAPOUR, Route.DUST)) {
                    if (row.estimates().containsKey(printed)) {
                        yield printed;
                    }
                }
                yield switch (row.state()) {
                    case GAS -> Route.GAS;
                    case SOLID -> Route.DUST;
                    default -> Route.VAPOUR;
                };
            }
        };
    }
}
