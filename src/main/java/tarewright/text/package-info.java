/**
 * Source text, the places in it, and the one door to the outside world (files and clock).
 * Uses nothing of ours.
 */
package tarewright.text;
