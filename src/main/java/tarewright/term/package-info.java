/**
 * Prints as sets: one procedure for one section is a lot, whose documents share a version code and are replaced together. Uses
 * everything from {@code print} down.
 */
package tarewright.term;
