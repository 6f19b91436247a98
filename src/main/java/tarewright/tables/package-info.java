/**
 * Reads the data files of the product, and a teacher's own table over them, into the records of the core. The only place
 * that knows how a table is written. May use {@code safety} and below, {@code text}, {@code finding}.
 */
package tarewright.tables;
