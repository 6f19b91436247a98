package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * Something that takes up acid or alkali.
 *
 * @param substance id in the table of substances
 * @param against acid or alkali
 * @param equivalents mol of H+ or OH- that one mol takes up
 * @param molarMass g/mol, without water of crystallisation
 * @param gasPerEquivalent mol of carbon dioxide per mol of H+
 * @param text how to add it, in the table's words
 */
public record Neutraliser(String substance, Against against, double equivalents, double molarMass, double gasPerEquivalent,
        String text,
        Provenance provenance) {
    /** What is taken up. */
    public enum Against {
        ACID, ALKALI
    }
}
