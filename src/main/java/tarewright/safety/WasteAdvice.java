package tarewright.safety;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;

/**
 * What to do with what is left. The local rules override all of it, and whatever shows it must say so.
 *
 * @param hazards of the mixture that is left
 * @param sink never, or as the local rules say
 * @param reasons the rules that apply, with what they found
 * @param containers where it goes, the first that fits first; empty for the sink alone
 * @param neutralising a recipe, where something is to be neutralised and may be
 * @param keepAlkaline whether acid would free a toxic gas from it: no recipe then
 */
public record WasteAdvice(Leftover left, Verdict hazards, WasteRule.Sink sink, List<Reason> reasons, List<String> containers,
        Optional<Recipe> neutralising, boolean keepAlkaline) {
    /** The pH at which to stop: from. */
    public static final double STOP_FROM = 6;
    /** The pH at which to stop: to. */
    public static final double STOP_TO = 9;

    /** A rule and what it found: an element, a statement, a substance. */
    public record Reason(WasteRule rule, List<String> found) {
        public Reason {
            found = List.copyOf(found);
        }
    }

    /**
     * How to neutralise. The amount is what the acid or alkali left would take up; the pH paper decides.
     *
     * @param mass of the neutraliser, kg as SI, shown in g
     * @param gas carbon dioxide that is given off, mol; empty if none
     */
    public record Recipe(Neutraliser with, Figure mass, Optional<Figure> gas) {
        /** Less than this, in kg, nobody weighs out for waste: a pinch, and the pH paper decides. Common practice, no source. */
        private static final double PINCH = 1e-4;

        /** Whether so many times the amount are still no more than a pinch. */
        public boolean isPinch(double times) {
            return mass.value() * times < PINCH;
        }
    }

    /** The same, with the hazards that it has on its way: nothing else of what to do changes. */
    public WasteAdvice classified(Verdict asItIsPutIn) {
        return new WasteAdvice(left, asItIsPutIn, sink, reasons, containers, neutralising, keepAlkaline);
    }

    public WasteAdvice {
        reasons = List.copyOf(reasons);
        containers = List.copyOf(containers);
    }
}
