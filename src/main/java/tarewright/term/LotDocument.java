package tarewright.term;

import tarewright.document.Sheet;
import tarewright.print.Printed;

/**
 * A document of a lot.
 *
 * @param large whether in large print
 * @param file its name within the lot's folder
 */
public record LotDocument(Sheet.Kind kind, boolean large, String file, Printed printed) {
}
