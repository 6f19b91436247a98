/**
 * What a resolved procedure puts on the bench: what stands there at its real strength, what is made, what gets into the air, what
 * must not meet, what is left. No words: documents, checks and figures are all made from it.
 */
package tarewright.procedure.bench;
