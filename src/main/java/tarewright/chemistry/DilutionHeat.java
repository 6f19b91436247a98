package tarewright.chemistry;

import java.util.Optional;
import tarewright.chemistry.TableValue.Known;
import tarewright.chemistry.TableValue.Limit;
import tarewright.chemistry.TableValue.OutOfRange;

/**
 * The heat that a solution of an acid gives off when it is diluted, at 25 °C.
 *
 * @param formula of the solute
 * @param released molality in mol/kg to the heat in kJ/mol that is set free down to infinite dilution; the first row is at 0
 */
public record DilutionHeat(Formula formula, Curve released) {
    /**
     * Heat set free by one mole of solute, in kJ/mol; less than nothing where it is taken up.
     *
     * @param from molality of what is diluted, mol/kg
     * @param to molality of what comes of it, mol/kg; not above {@code from}
     */
    public TableValue between(double from, double to) {
        Optional<Double> outside = java.util.stream.DoubleStream.of(from, to).filter(m -> !released.holds(m)).boxed().findFirst();
        if (outside.isPresent()) {
            return new OutOfRange(Limit.TABLE, outside.get(), released.first(), released.last(), "mol/kg");
        }
        return new Known(released.at(from) - released.at(to), released.provenance(from).and(released.provenance(to)));
    }
}
