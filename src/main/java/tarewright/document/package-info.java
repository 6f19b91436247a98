/**
 * The documents as data: handout, key, safety panel and the others as headings, steps, tables, questions, worked lines, all as
 * finished strings. May use {@code wording} and below. Nothing here knows of HTML or PDF.
 */
package tarewright.document;
