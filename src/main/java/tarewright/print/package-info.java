/**
 * Sheets on paper: a {@link tarewright.document.Sheet} through FreeMarker to XHTML, and through openhtmltopdf to a tagged PDF
 * file that is meant to pass PDF/UA-1 and PDF/A-2a; and as plain text for golden tests. Nothing is ever fetched: templates,
 * style sheets, fonts, pictograms and the colour profile come from the jar, or file by file from one folder that the caller
 * names. May use {@code document} and below.
 */
package tarewright.print;
