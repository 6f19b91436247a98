package tarewright.print;

/** How large a picture is printed: as large as its file says, but within the text column and a third of a page. In millimetres. */
record PrintedSize(double width, double height) {
    static final double WIDEST = 110;
    static final double HIGHEST = 80;
    /** The layout engine cannot place what has no height at all. */
    private static final double LEAST = 1;

    static PrintedSize of(double width, double height) {
        double share = Math.min(1, Math.min(WIDEST / width, HIGHEST / height));
        return new PrintedSize(Math.max(LEAST, width * share), Math.max(LEAST, height * share));
    }
}
