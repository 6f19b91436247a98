/**
 * Dimensions, the closed table of laboratory units, quantities and strengths as an author types them, rounding to an instrument's
 * division, numbers as digits. Reading gives the value or a trouble with its place, never an exception; words for the troubles
 * are elsewhere, by their ids. May use {@code exact}. No third-party package, no file, no clock, no locale.
 */
package tarewright.quantity;
