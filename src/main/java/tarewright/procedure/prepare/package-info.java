/**
 * What a technician gets ready for one procedure in one setting: totals with spare, containers, apparatus, the queue at a shared balance. Every figure
 * knows how it was found. Uses {@code procedure.bench} and below.
 */
package tarewright.procedure.prepare;
