/** One class for each check over a resolved procedure. May use {@code procedure.resolve} and below. */
package tarewright.procedure.check;
