package tarewright.safety;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import tarewright.chemistry.Provenance;

/**
 * How much of a gas or vapour the air may hold. Parts per million by volume; recommended limits and legal ones side by side.
 *
 * @param substance id in the table of substances
 * @param average recommended, over a working day
 * @param shortTerm recommended, over 15 minutes
 * @param ceiling recommended, never to be passed
 * @param dangerous immediately dangerous to life or health
 * @param legalAverage legal, over a working day
 * @param legalCeiling legal, never to be passed
 * @param lowerFlammable lower flammable limit, in per cent by volume
 * @param upperFlammable upper flammable limit, in per cent by volume
 * @param odour what is known of the smell, in the table's words
 * @param note the table's remark
 * @param fromMemory which fields are recalled; empty if none
 */
public record GasLimits(String substance, String name, String formula, OptionalDouble molarMass, OptionalDouble average,
        OptionalDouble shortTerm, OptionalDouble ceiling, OptionalDouble dangerous, OptionalDouble legalAverage,
        OptionalDouble legalCeiling,
        OptionalDouble lowerFlammable, OptionalDouble upperFlammable, String odour, String note, String fromMemory,
        Provenance provenance) {
    /** The stricter average over a working day. */
    public OptionalDouble strictestAverage() {
        return least(average, legalAverage);
    }

    /** The strictest limit for a breath or a few: short-term or ceiling. */
    public OptionalDouble strictestShort() {
        return least(shortTerm, least(ceiling, legalCeiling));
    }

    private static OptionalDouble least(OptionalDouble a, OptionalDouble b) {
        return DoubleStream.concat(a.stream(), b.stream()).min();
    }
}
