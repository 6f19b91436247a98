package tarewright.safety;

import tarewright.chemistry.Provenance;

/** From this mass percentage in water on, a solution of a liquid is flammable in this category: a flash-point table in brief. */
public record FlammableBand(String substance, double fromPercent, HazardClass gives, Provenance provenance) {
}
