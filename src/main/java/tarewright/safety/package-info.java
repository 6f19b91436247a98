/**
 * What can hurt: the hazards of a matter at its strength, what escapes into the room, what must not meet, what to wear, what to
 * do with what is left. The tables of a country's rules come in as records ({@link tarewright.safety.Rulebook}); everything here
 * is a function of them. May use {@code chemistry} and below. No third-party package, no file, no clock, no locale.
 *
 * <p>Two rules hold throughout. What the tables do not know is said to be unknown and treated as hazardous. Where the figures
 * leave a choice, the stricter side is taken and said.
 */
package tarewright.safety;
