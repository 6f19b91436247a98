/**
 * Every word that a person reads, by language: fixed words of the documents, findings, numbers and units as text, spoken formulas. The floors
 * below give codes and typed fields, never sentences. May use {@code procedure} and below.
 */
package tarewright.wording;
