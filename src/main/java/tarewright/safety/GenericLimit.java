package tarewright.safety;

import tarewright.chemistry.Provenance;

/**
 * A generic concentration limit of CLP Annex I: a mixture is in the tier from so many per cent of an ingredient of this class.
 *
 * @param tier rows of one tier are weighed together
 * @param gives the class of the mixture; its code is {@code =} where the ingredient's own statement is taken over
 * @param ingredientClass such as {@code Skin Corr.}
 * @param ingredientCategory such as {@code 1B}; empty for effects on lactation
 * @param sum whether the ingredients' shares of their limits are added, or each stands alone
 * @param mFactor which of the ingredient's multiplying factors divides the limit
 * @param clause such as {@code CLP Annex I Table 3.2.3}
 */
public record GenericLimit(String tier, HazardClass gives, String ingredientClass, String ingredientCategory, double limitPercent,
        boolean sum, MFactor mFactor, String clause, Provenance provenance) {
    /** The code of a tier that takes over the ingredient's own statement. */
    public static final String OWN = "=";

    /** Which multiplying factor applies. */
    public enum MFactor {
        NONE, ACUTE, CHRONIC
    }

    boolean takes(HazardClass ingredient) {
        return ingredient.name().equals(ingredientClass) && ingredient.category().equals(ingredientCategory)
                && (!ingredientClass.equals("STOT SE") || !ingredientCategory.equals("3")
                        || ingredient.code().equals(gives.code()));
    }
}
