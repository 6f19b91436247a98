package tarewright.safety;

/**
 * A hazard class and category with its statement, as CLP Annex VI abbreviates them: {@code Skin Corr.}, {@code 1B}, {@code H314}.
 *
 * @param name the abbreviated class
 * @param category {@code 1}, {@code 1A}, {@code 3}; empty for effects on lactation
 * @param code the hazard statement
 */
public record HazardClass(String name, String category, String code) {
    public HazardClass {
        Endpoint.of(name, code);
    }

    public Endpoint endpoint() {
        return Endpoint.of(name, code);
    }

    /**
     * Larger is worse, within one endpoint: category 1A before 1B before 1C before 2. Category 1 without a letter counts as 1A.
     */
    public int severity() {
        if (category.isEmpty()) {
            return 100;
        }
        int number = category.charAt(0) - '0';
        int letter = category.length() > 1 ? category.charAt(1) - 'A' : 0;
        return 100 - 10 * number - letter;
    }

    @Override
    public String toString() {
        return category.isEmpty() ? name + " " + code : name + " " + category + " " + code;
    }
}
