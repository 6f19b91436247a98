/**
 * What the author wrote, as a tree that knows where each thing stood: Markdown, fields, typed blocks, references.
 * Reading never throws on bad input; it returns a tree of what could be read, and findings.
 * May use {@code text} and {@code finding}. The Markdown library shows here and nowhere else.
 */
package tarewright.procedure.syntax;
