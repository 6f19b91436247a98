package tarewright.safety;

import java.util.Optional;
import tarewright.derivation.Figure;

/**
 * What is left in a cup.
 *
 * @param matter its substances, with its pH if known
 * @param acid H+ that could be taken up, mol: strong acid and the protons of weak acid that are still there
 * @param alkali OH- that could be taken up, mol
 */
public record Leftover(Matter matter, Optional<Figure> acid, Optional<Figure> alkali) {
}
