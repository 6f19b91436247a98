package tarewright.procedure.resolve;

import java.util.Optional;
import java.util.OptionalInt;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Front;
import tarewright.quantity.Typed;
import tarewright.setting.Overrides;
import tarewright.setting.Paper;
import tarewright.setting.Room;
import tarewright.setting.Setting;

/** The setting of a print: what overrides the procedure, then what the procedure says, then the usual. */
final class Settings {
    private Settings() {
    }

    static Setting of(Front front, Overrides overrides) {
        Setting usual = Setting.USUAL;
        Front.RoomFields own = front.room();
        Overrides.Air air = overrides.room();
        Room room = Room.USUAL
                .with(own.temperature().map(At::value), own.pressure().map(At::value), own.humidity().map(At::value), own.volume().map(At::value))
                .with(air.temperature(), air.pressure(), air.humidity(), air.volume());
        return new Setting(first(overrides.groups(), front.groups(), usual.groups()), first(overrides.groupSize(), front.groupSize(), usual.groupSize()),
                first(overrides.runs(), front.runs(), usual.runs()),
                overrides.spare().or(() -> front.spare().map(At::value)).map(Typed::si).orElse(usual.spare()), room,
                overrides.hood().orElseGet(() -> hood(front.hood())),
                overrides.paper().or(() -> front.paper().map(Paper::valueOf)).orElse(usual.paper()),
                front.language().map(At::value).or(overrides::language).orElse(usual.language()),
                overrides.country().or(() -> front.country().map(At::value)).orElse(usual.country()),
                new Setting.Occasion(overrides.school().orElse(""), overrides.section().orElse(""), overrides.date().orElse("")), overrides.onTheDay(), overrides.versions().orElse(usual.versions()));
    }

    private static int first(OptionalInt overriding, OptionalInt own, int usual) {
        return overriding.orElse(own.orElse(usual));
    }

    private static Setting.Hood hood(Optional<Boolean> said) {
        return said.map(yes -> yes ? Setting.Hood.GIVEN : Setting.Hood.NONE).orElse(Setting.Hood.NOT_SAID);
    }
}
