/**
 * Solutions as a technician makes them: from a solid, a liquid or a stock, in one step or several, by mixing two; how much
 * dissolves, how warm it gets, how acid it is. May use {@code chemistry} and below. Volumes of dilute solutions are taken to
 * add up, as common practice has it; what is made up to a mark needs no such assumption.
 */
package tarewright.chemistry.solution;
