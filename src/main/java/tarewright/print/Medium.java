package tarewright.print;

/** What a sheet is made for: pages of paper, or a browser. */
enum Medium { PAPER, WEB }
