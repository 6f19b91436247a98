package tarewright.setting;

/**
 * What a print is for.
 *
 * @param groups how many groups, at least 1
 * @param groupSize students in a group, at least 1
 * @param runs how often each group does it, at least 1
 * @param spare made beyond what is needed, as a fraction of it
 * @param room the air
 * @param hood whether there is a fume hood
 * @param paper the sheet
 * @param language BCP 47
 * @param country which hazard table; empty for the usual one
 * @param section the section's name; empty for none
 */
public record Setting(int groups, int groupSize, int runs, double spare, Room room, Hood hood, Paper paper, String language, String country,
        String section) {
    /** Where nothing is said: twelve groups of two, once, a tenth to spare, A4, English. */
    public static final Setting USUAL = new Setting(12, 2, 1, 0.1, Room.USUAL, Hood.NOT_SAID, Paper.A4, "en", "", "");

    public Setting {
        if (groups < 1 || groupSize < 1 || runs < 1 || !(spare >= 0)) {
            throw new IllegalArgumentException("groups " + groups + ", size " + groupSize + ", runs " + runs + ", spare " + spare);
        }
    }

    /** What is said of a fume hood. */
    public enum Hood { GIVEN, NONE, NOT_SAID }
}
