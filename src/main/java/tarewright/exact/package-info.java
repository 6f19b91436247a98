/**
 * Exact arithmetic: rational numbers, integer matrices, and the kernel of a matrix by fraction-free elimination.
 * Uses nothing of ours and nothing but the JDK.
 */
package tarewright.exact;
