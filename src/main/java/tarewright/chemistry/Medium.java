package tarewright.chemistry;

/** What a redox reaction in water may take its oxygen, hydrogen and charge from. */
public enum Medium {
    /** Water and H⁺. */
    ACIDIC("H^+"),
    /** Water and H⁺ written as H₃O⁺. */
    ACIDIC_HYDRONIUM("H3O^+"),
    /** Water and OH⁻. */
    BASIC("OH^-");

    private final String ion;

    Medium(String ion) {
        this.ion = ion;
    }

    /** The ion that it brings beside water. */
    public Formula ion() {
        return Formula.parse(ion).value().orElseThrow();
    }
}
