package tarewright.procedure.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.TableValue;
import tarewright.finding.Facts;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What can be wrong when blocks are put together. */
public sealed interface ResolveFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** Nothing by that name. @param wanted what kind of name stands here: {@code figure}, {@code reaction}, {@code apparatus}, {@code block} */
    record UnknownName(String text, String wanted, List<String> suggestions, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "unknown-name";
        }
    }

    /** A figure that this kind of block does not have. @param has the properties that it has */
    record NoSuchFigure(String property, String name, String type, List<String> has, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "no-such-figure";
        }
    }

    /** A name that stands for no single figure where one is needed. */
    record NotAFigure(String text, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "not-a-figure";
        }
    }

    /** A volume of something whose density is not known. */
    record VolumeNeedsDensity(String name, String formula, String type, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "ambiguous-state";
        }
    }

    /** A strength that cannot become mol/L without a density. */
    record DensityMissing(String name, String strength, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "density-missing";
        }
    }

    /** A strength that counts another formula, which does not settle how much of the solute there is. */
    record CountedAsUnclear(String counted, String solute, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "counted-as-unclear";
        }
    }

    /** A share by volume of what is no liquid by itself. */
    record NotALiquid(String solute, String strength, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "not-a-liquid";
        }
    }

    /** Volumes of oxygen of what gives none. */
    record NotAPeroxide(String solute, String strength, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "not-a-peroxide";
        }
    }

    record StrengthMissing(String name, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "strength-missing";
        }
    }

    record MissingQuantity(String name, String type, List<String> ways, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "missing-quantity";
        }
    }

    /** @param circle the names in the order in which each needs the next */
    record Circular(List<String> circle, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "circular";
        }
    }

    record SpeciesNotInEquation(String formula, String reaction, List<String> species, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "species-not-in-equation";
        }
    }

    /** A salt that does not bring the ion that it is to act as. @param brings the ions that it parts into, as far as they are known */
    record IonNotBrought(String salt, String ion, List<String> brings, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "ion-not-brought";
        }
    }

    record AmbiguousReaction(String name, String formula, List<String> reactions, Span at, List<Span> also) implements ResolveFinding {
        @Override
        public String id() {
            return "ambiguous-reaction";
        }
    }

    /** Two blocks that no equation brings together. */
    record NoCommonReaction(String first, String second, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "no-common-reaction";
        }
    }

    record DilutionImpossible(String name, String wanted, String stock, String needed, String volume, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "dilution-impossible";
        }
    }

    /** A table or relation that does not reach so far. @param limit the lasting name of the limit that is passed */
    record OutOfTableRange(String what, String limit, String asked, String from, String to, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "out-of-table-range";
        }

        /** With the end that is passed under a name of its own where it has one, since the words differ. */
        @Override
        public Map<String, Object> fields() {
            Map<String, Object> fields = new LinkedHashMap<>(Facts.of(this));
            fields.put("critical", passed(TableValue.Limit.CRITICAL_POINT, to));
            fields.put("triple", passed(TableValue.Limit.TRIPLE_POINT, from));
            fields.put("strongest", passed(TableValue.Limit.SATURATION, to));
            return fields;
        }

        private Optional<String> passed(TableValue.Limit which, String end) {
            return limit.equals(which.id()) ? Optional.of(end) : Optional.empty();
        }
    }

    /** The element has no atomic weight in the table. */
    record NoAtomicWeight(List<String> elements, String formula, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "no-atomic-weight";
        }
    }

    /** An instrument of another kind: a mass with a cylinder. @param measures what it does @param wanted what it should */
    record WrongInstrument(String instrument, String measures, String wanted, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "wrong-instrument";
        }
    }

    /** A reading that nothing says anything about. */
    record NothingExpected(String name, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "nothing-expected";
        }
    }

    /** A gas that the air pressure cannot hold over water so hot. */
    record WaterBoils(String temperature, String pressure, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "water-boils";
        }
    }

    /** {@code within} in a unit that the answer does not have. */
    record WrongAllowance(String text, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "wrong-allowance";
        }
    }

    /** A gas that the wash would swallow. @param volumes of gas that one volume of water takes, where Henry's constant is known */
    record TooSolubleToWash(String gas, Optional<String> volumes, String wash, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "too-soluble-to-wash";
        }
    }

    /** All of a gas dissolves in the liquid of its vessel. @param whole what there is of it */
    record GasAllDissolves(String name, String whole, Span at) implements ResolveFinding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "gas-all-dissolves";
        }
    }

    /** A wish for a gas that cannot be met: the more of it is made, the more liquid there is to take it up. */
    record WishDissolves(String name, String wanted, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "wish-dissolves";
        }
    }

    /** No pH curve is drawn. @param unknown formulas without known acid constants, or blocks without an amount or a formula */
    record NoCurve(String graph, List<String> unknown, Span at) implements ResolveFinding {
        public NoCurve {
            unknown = List.copyOf(unknown);
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "no-curve";
        }
    }

    /** The time of mixing does not lie on the x axis, or is no time. */
    record MixedOffAxis(String text, String axis, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "mixed-off-axis";
        }
    }

    /** A gas that is to be taken as it is, without a virial coefficient in the table. */
    record NoVirial(String name, String formula, Span at) implements ResolveFinding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "no-virial-coefficient";
        }
    }

    /** No enthalpy of formation for some species. @param stateless those whose state is not given */
    record NoEnthalpy(String reaction, List<String> species, List<String> stateless, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "no-enthalpy";
        }
    }

    /** Nothing in the pot takes up the heat. */
    record NothingWarms(String reaction, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "nothing-warms";
        }
    }

    /** A reading whose expected value is not what the procedure computes for the figure that it measures. */
    record ReadingContradicts(String name, String read, String of, String computed, Span at) implements ResolveFinding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "reading-contradicts";
        }
    }

    /** A reading that is expected, or asked for, in a unit of another kind than what it measures. @param text what is expected, or the unit */
    record ReadingKind(String name, String text, String otherKind, String kind, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "reading-kind";
        }
    }

    /** Two readings that both say they measure one figure. */
    record ReadTwice(String of, String first, String second, Span at, List<Span> also) implements ResolveFinding {
        @Override
        public String id() {
            return "read-twice";
        }
    }

    /** Two answers in one question. */
    record SecondAnswer(String question, Span at, List<Span> also) implements ResolveFinding {
        @Override
        public String id() {
            return "second-answer";
        }
    }

    /** A figure that could not be worked out although nothing else was wrong: nothing may print in its place. */
    record NotWorkedOut(String text, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "not-worked-out";
        }
    }

    /** The range of an axis is of another kind than what the axis shows. */
    record AxisKind(String shown, String kind, String range, String otherKind, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "axis-kind";
        }
    }

    /** A drift on a graph is of another kind than the axis that it goes along. */
    record DriftKind(String text, String axis, String kind, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "drift-kind";
        }
    }

    /** More amounts are dealt over the runs than there are runs: the last ones nobody gets. */
    record FewRuns(String name, int amounts, int runs, Span at) implements ResolveFinding {
        @Override
        public String id() {
            return "few-runs";
        }
    }
}
