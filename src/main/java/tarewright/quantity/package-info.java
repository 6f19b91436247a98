/**
 * Dimensions, the closed table of laboratory units, quantities as an author types them, rounding to an instrument's division.
 * May use {@code exact}. No third-party package, no file, no clock, no locale.
 */
package tarewright.quantity;
