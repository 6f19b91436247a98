package tarewright.safety;

/** How a matter lies on the bench. It decides which row of the tables speaks for it and what can happen to it. */
public enum Form {
    /** Ribbon, foil, wire, granules, lumps. */
    MASSIVE,
    /** Powder, dust, fine turnings. */
    POWDER,
    /** A solid whose fineness is not known: taken as the more dangerous one. */
    SOLID,
    /** A solid under or in water: a precipitate. */
    SLURRY,
    /** A liquid that is not mainly water: pure, or as it comes from the supplier. */
    LIQUID,
    /** Dissolved; what the parts do not account for is water. */
    SOLUTION,
    /** A gas at about the pressure of the room. */
    GAS;

    /** Whether it is a dry solid. */
    public boolean dry() {
        return this == MASSIVE || this == POWDER || this == SOLID;
    }

    /** Whether it can splash. */
    public boolean wet() {
        return this == LIQUID || this == SOLUTION || this == SLURRY;
    }
}
