package tarewright.procedure.recipe;

/** How what stands on the shelf differs from what the procedure names; the recipe is worked for the shelf. */
public sealed interface Rework {
    /** Another hydrate, so another mass. Formulas in Unicode. */
    record OtherHydrate(String named, String onShelf) implements Rework {
    }

    /** A bottle of the same name with another strength, as both were typed. */
    record OtherStrength(String named, String onShelf) implements Rework {
    }
}
