package tarewright.procedure.prepare;

import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.ApparatusItem.Share;
import tarewright.setting.Setting;

/**
 * How many of one thing the class needs.
 *
 * @param place where it stands
 * @param onTray how many stand on the tray of one group; none of what is shared
 * @param total for the class; of what is used up, with spare
 */
public record Equipment(ApparatusItem item, Place place, int onTray, int total) {
    /** Where a thing stands. */
    public enum Place {
        /** On the tray of each group. */
        TRAY,
        /** Between some groups. */
        SHARED,
        /** For the whole class. */
        FRONT
    }

    /** What is used up is needed for each run, and with spare; all else is washed and used again. */
    static Equipment of(ApparatusItem item, Setting setting) {
        Share share = item.share();
        int runs = item.usedUp() ? setting.runs() : 1;
        return switch (share.perGroups()) {
            case Share.CLASS -> new Equipment(item, Place.FRONT, 0, withSpare(share.count() * runs, item, setting));
            case Share.STUDENT -> tray(item, share.count() * setting.groupSize() * runs, setting);
            case 1 -> tray(item, share.count() * runs, setting);
            default -> new Equipment(item, Place.SHARED, 0,
                    withSpare(share.count() * ceiling(setting.groups(), share.perGroups()) * runs, item, setting));
        };
    }

    private static Equipment tray(ApparatusItem item, int each, Setting setting) {
        return new Equipment(item, Place.TRAY, each, withSpare(each * setting.groups(), item, setting));
    }

    private static int withSpare(int count, ApparatusItem item, Setting setting) {
        return item.usedUp() ? (int) Math.ceil(count * (1 + setting.spare()) - 1e-9) : count;
    }

    static int ceiling(int number, int per) {
        return (number + per - 1) / per;
    }

    /** Whether it comes back and is counted. */
    public boolean comesBack() {
        return !item.usedUp() && !item.kept();
    }
}
