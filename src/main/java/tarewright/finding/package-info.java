/**
 * The shape of a finding: what a check has to say about a place in the author's text, as data without words.
 * Each floor owns the records of its own findings; {@code wording} turns them into sentences. May use {@code text}.
 */
package tarewright.finding;
