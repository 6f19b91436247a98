/**
 * What a print is for: groups, spare, the room, paper, language, country. The command line overrides a section, a section overrides the procedure,
 * the procedure overrides the usual. May use {@code tables} and below.
 */
package tarewright.setting;
