/**
 * Chemistry: elements, formulas, equations and their balance; amounts with their derivations.
 * May use {@code exact}, {@code quantity} and {@code derivation}. No third-party package, no file, no clock, no locale.
 * A mistake of the author's comes back as a trouble, never as an exception.
 */
package tarewright.chemistry;
