package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.quantity.Typed;
import tarewright.quantity.Units;
import tarewright.safety.Overpressure;
import tarewright.setting.Room;

/** A closed vessel in which a gas forms. */
public record ClosedVessel(ApparatusItem vessel, Made gas, Overpressure pressure) {
    /** What an author calls a closed vessel without saying that it is. */
    private static final Pattern CLOSED = Pattern.compile("\\b(closed|sealed|screw[- ]?cap(ped)?|corked|stoppered)\\b");

    static List<ClosedVessel> of(Resolved procedure, OnTheBench bench) {
        List<ClosedVessel> all = new ArrayList<>();
        for (Made gas : bench.made()) {
            gas.air().ifPresent(air -> vessel(procedure, gas).ifPresent(vessel -> freeVolume(procedure, gas, vessel)
                    .ifPresent(free -> all.add(new ClosedVessel(vessel, gas, pressure(procedure, gas, air.release().moles(), free))))));
        }
        return all;
    }

    /** That which the gas is in; where it is in none of its own, that which it is made in. */
    private static Optional<ApparatusItem> vessel(Resolved procedure, Made gas) {
        Optional<At<String>> own = gas.block().flatMap(b -> b.block().vessel());
        Stream<At<String>> names = own.isPresent() ? own.stream()
                : liquids(procedure, gas).flatMap(q -> q.block().vessel().stream());
        return names.flatMap(n -> procedure.procedure().apparatus(n.value()).stream()).filter(ClosedVessel::isClosed)
                .filter(v -> v.capacity().filter(c -> c.value().unit().dimension().equals(Units.symbol("L").orElseThrow().dimension()))
                        .isPresent()).findFirst();
    }

    private static boolean isClosed(ApparatusItem vessel) {
        return vessel.closed() || CLOSED.matcher(vessel.words().toLowerCase(Locale.ROOT)).find();
    }

    private static Stream<ResolvedQuantity> liquids(Resolved procedure, Made gas) {
        List<String> blocks = gas.reaction().pots().stream().map(PotAccount::reactants).flatMap(List::stream)
                .flatMap(r -> r.blocks().stream()).distinct().toList();
        return blocks.stream().flatMap(b -> procedure.quantity(b).stream())
                .filter(q -> q.block().is(Kind.SOLUTION) || q.block().is(Kind.LIQUID) || q.block().vessel().isPresent());
    }

    private static Optional<Figure> freeVolume(Resolved procedure, Made gas, ApparatusItem vessel) {
        Typed capacity = vessel.capacity().orElseThrow().value();
        List<Step.Term> terms = new ArrayList<>(List.of(new Step.Term(1, Figure.given(Symbol.words("capacity"), capacity.unit(),
                capacity.si(), new Origin.Author()))));
        liquids(procedure, gas).filter(q -> !q.block().is(Kind.SOLID) && !q.block().is(Kind.GAS))
                .filter(q -> q.block().vessel().map(v -> v.value().equals(vessel.name())).orElse(true))
                .forEach(q -> q.figure(Property.VOLUME).ifPresent(v -> terms.add(new Step.Term(-1, v))));
        return Optional.of(Figure.of(Symbol.ofName("V", "free"), capacity.unit(), new Step.Sum(terms))).filter(f -> f.value() > 0);
    }

    private static Overpressure pressure(Resolved procedure, Made gas, Figure moles, Figure free) {
        Room room = procedure.setting().room();
        Figure temperature = gas.reaction().temperatureRise().filter(r -> r.value() > 0)
                .map(rise -> Figure.of(room.temperature().symbol(), room.temperature().unit(),
                        new Step.Sum(List.of(new Step.Term(1, room.temperature()), new Step.Term(1, rise)))))
                .orElse(room.temperature());
        return Overpressure.of(moles, free, temperature, room.temperature(), room.pressure());
    }
}
