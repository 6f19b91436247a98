package tarewright.safety;

/** A way into the body with the unit of its acute toxicity estimate (CLP Annex I Table 3.1.1). */
public enum Route {
    /** mg per kg of body mass. */
    ORAL,
    /** mg per kg of body mass. */
    DERMAL,
    /** Parts per million by volume. */
    GAS,
    /** mg/L. */
    VAPOUR,
    /** mg/L. */
    DUST;

    Endpoint endpoint() {
        return switch (this) {
            case ORAL -> Endpoint.SWALLOWED;
            case DERMAL -> Endpoint.ON_SKIN;
            default -> Endpoint.INHALED;
        };
    }
}
