package tarewright.chemistry;

/**
 * A chemical element with its standard atomic weight.
 *
 * @param number atomic number, 1 to 118
 * @param symbol as IUPAC writes it
 * @param name in English
 * @param atomicWeight standard atomic weight, which is also its molar mass in g/mol; above zero
 * @param uncertainty of the atomic weight, as its source states it, in the same measure
 * @param source where the value was read
 */
public record Element(int number, String symbol, String name, double atomicWeight, double uncertainty, String source) {
    public Element {
        if (number < 1 || number > Symbols.ALL.size() || !Symbols.ALL.get(number - 1).equals(symbol)) {
            throw new IllegalArgumentException("element " + number + " is not " + symbol);
        }
        if (!(atomicWeight > 0) || !(uncertainty >= 0)) {
            throw new IllegalArgumentException("atomic weight of " + symbol + ": " + atomicWeight + " ± " + uncertainty);
        }
    }
}
