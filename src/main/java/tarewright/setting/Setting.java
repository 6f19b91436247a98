package tarewright.setting;

import java.util.List;

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
 * @param occasion school, section, day
 * @param onTheDay values that are typed in the place of the procedure's own
 * @param versions of the questions' numbers that are asked for, 1 to {@link #MOST_VERSIONS}
 */
public record Setting(int groups, int groupSize, int runs, double spare, Room room, Hood hood, Paper paper, String language, String country,
        Occasion occasion, List<DayValue> onTheDay, int versions) {
    /** Four who sit around one bench have a version each. */
    public static final int MOST_VERSIONS = 4;

    /** Where nothing is said: twelve groups of two, once, a tenth to spare, A4, English. */
    public static final Setting USUAL = new Setting(12, 2, 1, 0.1, Room.USUAL, Hood.NOT_SAID, Paper.A4, "en", "", Occasion.NONE, List.of(), 1);

    public Setting {
        onTheDay = List.copyOf(onTheDay);
        if (groups < 1 || groupSize < 1 || runs < 1 || !(spare >= 0) || versions < 1 || versions > MOST_VERSIONS) {
            throw new IllegalArgumentException("groups " + groups + ", size " + groupSize + ", runs " + runs + ", spare " + spare + ", versions " + versions);
        }
    }

    /** The section's name; empty for none. */
    public String section() {
        return occasion.section();
    }

    /** For whom and when; empty what is not known. @param date ISO 8601 */
    public record Occasion(String school, String section, String date) {
        public static final Occasion NONE = new Occasion("", "", "");
    }

    /** What is said of a fume hood. */
    public enum Hood { GIVEN, NONE, NOT_SAID }
}
