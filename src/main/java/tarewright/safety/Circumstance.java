package tarewright.safety;

/** What a procedure does beside mixing that asks for protection. */
public enum Circumstance {
    /** Gas is made, held or moved in a gas syringe. */
    GAS_SYRINGE,
    /** Glass tubing is pushed into stoppers. */
    GLASS_TUBING,
    /** Something burns: a burner, a candle, a splint. */
    FLAME,
    /** Something is hot to the touch. */
    HEAT
}
