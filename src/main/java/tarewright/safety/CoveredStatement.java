package tarewright.safety;

import tarewright.chemistry.Provenance;

/** A statement that another one makes redundant on a label (CLP Article 27): H314 covers H318. */
public record CoveredStatement(String code, String covers, Provenance provenance) {
}
