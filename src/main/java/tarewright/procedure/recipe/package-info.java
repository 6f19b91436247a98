/**
 * How the technician makes each solution, from what stands on the shelf. Uses {@code procedure.bench} and what is below it; its words are
 * found elsewhere.
 */
package tarewright.procedure.recipe;
