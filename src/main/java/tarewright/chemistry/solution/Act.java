package tarewright.chemistry.solution;

import java.util.ArrayList;
import java.util.List;
import tarewright.derivation.Figure;

/** One thing to do when a solution is made; the words for it are found elsewhere. */
public sealed interface Act {
    /** So much water first, about. @param volume in m³; never more than the room that is left */
    record Water(double volume) implements Act {
    }

    /** Weigh or measure out. */
    record Take(Source source, Figure amount, Delivery delivery) implements Act {
    }

    /** Bring it into the water. */
    record Add(Care.Order order) implements Act {
    }

    /** How much it warms is not known: slowly, and with a thermometer in it. */
    record HeatNotKnown() implements Act {
    }

    /** Let it cool to room temperature: it is made up to the mark cold. */
    record Cool() implements Act {
    }

    /** Make up to the mark. */
    record MakeUp(Figure volume) implements Act {
    }

    /** Close and turn over until it is even. */
    record Mix() implements Act {
    }

    /** The acts of one step, in order. @param care how the solute goes in */
    public static List<Act> of(Preparation step, Care care) {
        boolean liquid = step.source() instanceof Source.Stock;
        double room = step.volume().value() - (liquid ? Math.min(step.exact().value(), step.volume().value()) : 0);
        double share = care.hot() || care.order() == Care.Order.ACID_INTO_WATER ? 0.6 : 0.5;
        List<Act> acts = new ArrayList<>();
        acts.add(new Take(step.source(), step.taken(), step.delivery()));
        acts.add(new Water(Math.min(share * step.volume().value(), room)));
        if (care.heat() == Care.Heat.NOT_KNOWN) {
            acts.add(new HeatNotKnown());
        }
        acts.add(new Add(care.order()));
        if (care.hot()) {
            acts.add(new Cool());
        }
        acts.add(new MakeUp(step.volume()));
        acts.add(new Mix());
        return List.copyOf(acts);
    }
}
