package tarewright.procedure.resolve;

import java.util.List;
import tarewright.chemistry.Formula;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.declare.ValueBlock;

/** What a reference means. */
sealed interface Meaning {
    /** {@code {ribbon}}: what a group measures out of it. */
    record Itself(QuantityBlock block) implements Meaning {
    }

    /** {@code {moles of ribbon}}. */
    record Of(Property property, QuantityBlock block) implements Meaning {
    }

    record Valued(ValueBlock block) implements Meaning {
    }

    record ReadOff(ReadingBlock block) implements Meaning {
    }

    /** {@code {dissolving}}: the balanced equation. */
    record Equation(ReactionBlock block) implements Meaning {
    }

    /** {@code {molar mass of H2O}}. */
    record MolarMass(Formula formula) implements Meaning {
    }

    /** {@code {formula NaCl}}. */
    record FormulaText(Formula formula) implements Meaning {
    }

    /** {@code {ratio of acid to ribbon}}. */
    record Ratio(QuantityBlock above, QuantityBlock below) implements Meaning {
    }

    record Label(QuantityBlock block) implements Meaning {
    }

    record Working(Meaning of) implements Meaning {
    }

    record Blank(Meaning of) implements Meaning {
    }

    record OfRoom(Circumstance what) implements Meaning {
    }

    /** {@code {groups}}. */
    record Groups() implements Meaning {
    }

    /** {@code {section}}. */
    record Section() implements Meaning {
    }

    /** {@code {heat of dissolving}}, {@code {temperature rise of dissolving}}. */
    record OfReaction(Thermal what, ReactionBlock block) implements Meaning {
    }

    /** Nothing by that name. @param suggestions names that would do, nearest first */
    record Unknown(List<String> suggestions) implements Meaning {
    }

    /** A formula that cannot be read. */
    record BadFormula(tarewright.chemistry.FormulaTrouble trouble, int offset) implements Meaning {
    }

    enum Circumstance { TEMPERATURE, PRESSURE, HUMIDITY, VOLUME }

    enum Thermal { HEAT, TEMPERATURE_RISE }
}
