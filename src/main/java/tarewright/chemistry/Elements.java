package tarewright.chemistry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The elements that have an atomic weight, as some table gives them; those without a standard one are not among them. */
public final class Elements {
    private final Map<String, Element> bySymbol;

    private Elements(Map<String, Element> bySymbol) {
        this.bySymbol = Collections.unmodifiableMap(bySymbol);
    }

    /**
     * The elements of a table, in its order.
     *
     * @throws IllegalArgumentException if one is given twice
     */
    public static Elements of(List<Element> elements) {
        Map<String, Element> bySymbol = new LinkedHashMap<>();
        for (Element element : elements) {
            if (bySymbol.put(element.symbol(), element) != null) {
                throw new IllegalArgumentException(element.symbol() + " twice");
            }
        }
        return new Elements(bySymbol);
    }

    public Optional<Element> symbol(String symbol) {
        return Optional.ofNullable(bySymbol.get(symbol));
    }

    public List<Element> all() {
        return List.copyOf(bySymbol.values());
    }
}
