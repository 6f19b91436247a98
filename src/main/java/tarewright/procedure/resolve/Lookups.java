package tarewright.procedure.resolve;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.finding.Finding;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.TroubleFinding;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.expression.Evaluator;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.expression.Lookup;
import tarewright.quantity.Unit;
import tarewright.text.Span;

/** Figures by what the author calls them, on one bench. */
final class Lookups implements Lookup {
    private final Bench bench;
    private final Worksheet worksheet;

    Lookups(Bench bench, Worksheet worksheet) {
        this.bench = bench;
        this.worksheet = worksheet;
    }

    @Override
    public Optional<Figure> figure(Expression.Named named, Consumer<Finding> findings) {
        return figure(bench.names.meaning(named.text()), named.text(), named.span());
    }

    @Override
    public List<Figure> repeated(Expression.Named named, Consumer<Finding> findings) {
        Meaning meaning = bench.names.meaning(named.text());
        if (meaning instanceof Meaning.ReadOff read) {
            return worksheet.reading(read.block()).map(r -> r.each().isEmpty() ? List.of(r.value()) : r.each()).orElse(List.of());
        }
        return figure(meaning, named.text(), named.span()).map(List::of).orElse(List.of());
    }

    /** The figure that a meaning stands for; a finding at {@code at} where it stands for none. */
    Optional<Figure> figure(Meaning meaning, String text, Span at) {
        if (meaning instanceof Meaning.Unknown unknown) {
            bench.note(new ResolveFinding.UnknownName(text, "figure", unknown.suggestions(), at));
            return Optional.empty();
        }
        if (meaning instanceof Meaning.BadFormula bad) {
            bench.note(new TroubleFinding(bad.trouble().id(), at, bad.trouble()));
            return Optional.empty();
        }
        if (meaning instanceof Meaning.Itself itself) {
            return of(itself.block(), Amounts.measuredOut(itself.block()), at);
        }
        if (meaning instanceof Meaning.Of of) {
            return of(of.block(), of.property(), at);
        }
        if (meaning instanceof Meaning.Valued valued) {
            return worksheet.value(valued.block(), bench);
        }
        if (meaning instanceof Meaning.ReadOff read) {
            return worksheet.reading(read.block()).map(ResolvedReading::value);
        }
        if (meaning instanceof Meaning.MolarMass molar) {
            return molarMass(molar, at);
        }
        if (meaning instanceof Meaning.Ratio ratio) {
            Optional<Figure> figure = new Reacting(bench).ratio(ratio.above(), ratio.below());
            if (figure.isEmpty()) {
                bench.note(new ResolveFinding.NoCommonReaction(ratio.above().name(), ratio.below().name(), at));
            }
            return figure;
        }
        if (meaning instanceof Meaning.OfRoom room) {
            return room(room.what(), at);
        }
        if (meaning instanceof Meaning.Groups) {
            return Optional.of(Figure.given(Symbol.words("groups"), Unit.ONE, bench.setting.groups(), new Origin.Counted()));
        }
        if (meaning instanceof Meaning.OfReaction thermal) {
            return heat(thermal, at);
        }
        bench.note(new ResolveFinding.NotAFigure(text, at));
        return Optional.empty();
    }

    private Optional<Figure> heat(Meaning.OfReaction thermal, Span at) {
        Heats heats = new Heats(bench, thermal.block());
        if (thermal.what() == Meaning.Thermal.HEAT) {
            return heats.heat(Optional.of(at));
        }
        Optional<Figure> rise = heats.temperatureRise(Optional.of(at));
        if (rise.isEmpty() && heats.heat(Optional.empty()).isPresent()) {
            bench.note(new ResolveFinding.NothingWarms(thermal.block().name(), at));
        }
        return rise;
    }

    private Optional<Figure> of(QuantityBlock block, Property property, Span at) {
        Set<Property> has = Facets.of(bench, block);
        if (!has.contains(property)) {
            if (property == Property.VOLUME && (block.is(QuantityBlock.Kind.SOLID) || block.is(QuantityBlock.Kind.LIQUID) && !has.contains(Property.DENSITY))) {
                bench.note(new ResolveFinding.VolumeNeedsDensity(block.name(), bench.matter(block).map(m -> m.formula().unicode()).orElse(""),
                        block.kind().word(), at));
            } else {
                bench.note(new ResolveFinding.NoSuchFigure(property.words(), block.name(), block.kind().word(),
                        has.stream().map(Property::words).toList(), at));
            }
            return Optional.empty();
        }
        return bench.figure(block, property);
    }

    private Optional<Figure> molarMass(Meaning.MolarMass molar, Span at) {
        List<String> unweighed = bench.constituents.unweighed(molar.formula());
        if (!unweighed.isEmpty()) {
            bench.note(new ResolveFinding.NoAtomicWeight(unweighed, molar.formula().unicode(), at));
            return Optional.empty();
        }
        return Optional.of(bench.constituents.molarMass(molar.formula()));
    }

    private Optional<Figure> room(Meaning.Circumstance what, Span at) {
        switch (what) {
            case TEMPERATURE:
                return Optional.of(bench.setting.room().temperature());
            case PRESSURE:
                return Optional.of(bench.setting.room().pressure());
            case HUMIDITY:
                return Optional.of(bench.setting.room().humidity());
            default:
                if (bench.setting.room().volume().isEmpty()) {
                    bench.note(new ResolveFinding.UnknownName(what.name().toLowerCase(Locale.ROOT) + " of room", "figure", List.of(), at));
                }
                return bench.setting.room().volume();
        }
    }

    /** A value block's formula, worked on this bench. */
    Optional<Figure> work(ValueBlock block) {
        return block.is().flatMap(is -> {
            var found = Evaluator.evaluate(is.value(), Symbol.words(block.name()), block.unit(), this);
            found.findings().forEach(bench::note);
            return found.value().map(f -> Answers.precise(f, block.precision()));
        });
    }
}
