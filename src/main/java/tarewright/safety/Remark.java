package tarewright.safety;

import java.util.List;

/**
 * Something that must be said beside a classification.
 *
 * @param about the words for it are found by this
 * @param details names, codes or figures that the words need
 */
public record Remark(About about, List<String> details) {
    /** What a remark is about; its details in brackets. */
    public enum About {
        /** The mass percentage was worked out without a density, on the stricter side [substance]. */
        STRENGTH_ESTIMATED,
        /** No strength is known: the undiluted substance was taken [substance]. */
        STRENGTH_UNSTATED,
        /** A salt or acid stands for an ion [ion, substance]. */
        ION,
        /** Annex VI gives a minimum classification: the supplier's may be stricter [substance]. */
        MINIMUM_CLASSIFICATION,
        /** No multiplying factor is given for aquatic toxicity; 1 was taken, the supplier's may be larger [substance]. */
        M_FACTOR_NOT_GIVEN,
        /** Suppliers' own classification, no entry in Annex VI [substance]. */
        SELF_CLASSIFIED,
        /** The row, or a part of it, is from memory [substance, which part]. */
        FROM_MEMORY,
        /** Suppliers often add statements that the list does not have [substance, codes]. */
        SUPPLIERS_ADD,
        /**
         * A physical hazard of the solid or gas that its solution in water does not have; what dries on paper or cloth has
         * [substance, code].
         */
        NOT_CARRIED_INTO_WATER,
        /** No flash point is known for this strength: the class of the undiluted liquid was kept [substance, code]. */
        FLASH_POINT_UNKNOWN,
        /** A gas in water: its class by inhalation was kept [substance, code]. */
        DISSOLVED_GAS,
        /** The row is the teacher's own [substance, source]. */
        TEACHERS_TABLE,
        /** Not for a school, not for students, or for the teacher only [substance, restriction]. */
        RESTRICTED
    }

    public Remark {
        details = List.copyOf(details);
    }

    static Remark of(About about, String... details) {
        return new Remark(about, List.of(details));
    }
}
