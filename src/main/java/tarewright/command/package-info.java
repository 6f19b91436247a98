/**
 * The command line: arguments, wiring, printing findings, exit statuses, figures as JSON. May use everything.
 */
package tarewright.command;
