/**
 * What the author declared: typed blocks read into records, every field checked for its kind, every name still a name.
 * Between the syntax tree and the resolved procedure. May use {@code procedure.syntax}, {@code tables} and below.
 */
package tarewright.procedure.declare;
