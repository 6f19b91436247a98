package tarewright.procedure.resolve;

import java.util.Optional;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Front;
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
        Room room = Room.USUAL
                .with(own.temperature().map(At::value), own.pressure().map(At::value), own.humidity().map(At::value), own.volume().map(At::value))
                .with(overrides.temperature(), overrides.pressure(), overrides.humidity(), overrides.volume());
        Paper paper = overrides.paper().or(() -> front.paper().map(Paper::valueOf)).orElse(usual.paper());
        return new Setting(overrides.groups().orElse(front.groups().orElse(usual.groups())), front.groupSize().orElse(usual.groupSize()),
                front.runs().orElse(usual.runs()), front.spare().map(s -> s.value().si()).orElse(usual.spare()), room, hood(front.hood()), paper,
                front.language().map(At::value).orElse(usual.language()), front.country().map(At::value).orElse(usual.country()), usual.section());
    }

    private static Setting.Hood hood(Optional<Boolean> said) {
        return said.map(yes -> yes ? Setting.Hood.GIVEN : Setting.Hood.NONE).orElse(Setting.Hood.NOT_SAID);
    }
}
