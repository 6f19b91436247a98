package tarewright.safety;

import java.util.Map;

/** What a hazard class is about. Of one endpoint the most severe class stands. */
public enum Endpoint {
    EXPLOSIVE(true), FLAMMABLE_GAS(true), OXIDISING_GAS(true), PRESSURE(true), FLAMMABLE_LIQUID(true), FLAMMABLE_SOLID(true),
    SELF_REACTIVE(true), PYROPHORIC(true), SELF_HEATING(true), WATER_REACTIVE(true), OXIDISING_LIQUID(true),
    OXIDISING_SOLID(true), METAL_CORROSION(true), SWALLOWED(false), ON_SKIN(false), INHALED(false), SKIN(false), EYE(false),
    AIRWAYS_ALLERGY(false),
    SKIN_ALLERGY(false), MUTATION(false), CANCER(false), REPRODUCTION(false), LACTATION(false), ORGANS_ONCE(false),
    AIRWAYS_IRRITATION(false), DROWSINESS(false), ORGANS_REPEATED(false), ASPIRATION(false), AQUATIC_ACUTE(false),
    AQUATIC_CHRONIC(false), OZONE(false);

    private static final Map<String, Endpoint> BY_CLASS = Map.ofEntries(
            Map.entry("Expl.", EXPLOSIVE), Map.entry("Desens. Expl.", EXPLOSIVE), Map.entry("Flam. Gas", FLAMMABLE_GAS),
            Map.entry("Ox. Gas", OXIDISING_GAS), Map.entry("Press. Gas", PRESSURE), Map.entry("Flam. Liq.", FLAMMABLE_LIQUID),
            Map.entry("Flam. Sol.", FLAMMABLE_SOLID), Map.entry("Self-react.", SELF_REACTIVE),
            Map.entry("Org. Perox.", SELF_REACTIVE), Map.entry("Pyr. Liq.", PYROPHORIC), Map.entry("Pyr. Sol.", PYROPHORIC),
            Map.entry("Self-heat.", SELF_HEATING),
            Map.entry("Water-react.", WATER_REACTIVE), Map.entry("Ox. Liq.", OXIDISING_LIQUID),
            Map.entry("Ox. Sol.", OXIDISING_SOLID),
            Map.entry("Met. Corr.", METAL_CORROSION), Map.entry("Skin Corr.", SKIN), Map.entry("Skin Irrit.", SKIN),
            Map.entry("Eye Dam.", EYE), Map.entry("Eye Irrit.", EYE), Map.entry("Resp. Sens.", AIRWAYS_ALLERGY),
            Map.entry("Skin Sens.", SKIN_ALLERGY), Map.entry("Muta.", MUTATION), Map.entry("Carc.", CANCER),
            Map.entry("Repr.", REPRODUCTION), Map.entry("Lact.", LACTATION), Map.entry("STOT RE", ORGANS_REPEATED),
            Map.entry("Asp. Tox.", ASPIRATION), Map.entry("Aquatic Acute", AQUATIC_ACUTE),
            Map.entry("Aquatic Chronic", AQUATIC_CHRONIC), Map.entry("Ozone", OZONE));

    private final boolean physical;

    Endpoint(boolean physical) {
        this.physical = physical;
    }

    /** Fire, explosion and corrosion of metals, as against health and environment. */
    public boolean physical() {
        return physical;
    }

    /**
     * The endpoint of a hazard class.
     *
     * @throws IllegalArgumentException if the class is none of CLP Annex I
     */
    static Endpoint of(String hazardClass, String code) {
        if (hazardClass.equals("Acute Tox.")) {
            return switch (code.substring(0, 3)) {
                case "H30" -> SWALLOWED;
                case "H31" -> ON_SKIN;
                default -> INHALED;
            };
        }
        if (hazardClass.equals("STOT SE")) {
            return switch (code) {
                case "H335" -> AIRWAYS_IRRITATION;
                case "H336" -> DROWSINESS;
                default -> ORGANS_ONCE;
            };
        }
        Endpoint endpoint = BY_CLASS.get(hazardClass);
        if (endpoint == null) {
            throw new IllegalArgumentException("hazard class " + hazardClass);
        }
        return endpoint;
    }
}
