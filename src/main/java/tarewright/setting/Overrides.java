package tarewright.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tarewright.quantity.Typed;

/**
 * What the command line, a section or a term says in the place of the procedure's own values. What nobody said is absent.
 *
 * @param groups how many groups
 * @param groupSize students in a group
 * @param runs how often each group does it
 * @param spare made beyond what is needed, as a fraction of it
 * @param hood whether there is a fume hood
 * @param room the air
 * @param paper the sheet
 * @param language BCP 47, for a procedure that does not say its own
 * @param country which hazard table
 * @param school the school's name
 * @param section the section's name
 * @param date the day of the class, ISO 8601
 * @param onTheDay values as they really are on the day
 * @param versions of the questions' numbers
 */
public record Overrides(OptionalInt groups, OptionalInt groupSize, OptionalInt runs, Optional<Typed> spare, Optional<Setting.Hood> hood, Air room,
        Optional<Paper> paper, Optional<String> language, Optional<String> country, Optional<String> school, Optional<String> section,
        Optional<String> date, List<DayValue> onTheDay, OptionalInt versions) {
    public static final Overrides NONE = new Overrides(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(),
            Optional.empty(), Air.NONE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
            OptionalInt.empty());

    public Overrides {
        onTheDay = List.copyOf(onTheDay);
    }

    /** What is said of the room; each may be left out. */
    public record Air(Optional<Typed> temperature, Optional<Typed> pressure, Optional<Typed> humidity, Optional<Typed> volume) {
        public static final Air NONE = new Air(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

        /** This, and what it does not say from another. */
        Air over(Air other) {
            return new Air(temperature.or(other::temperature), pressure.or(other::pressure), humidity.or(other::humidity), volume.or(other::volume));
        }
    }

    public Overrides withGroups(int newGroups) {
        return new Overrides(OptionalInt.of(newGroups), groupSize, runs, spare, hood, room, paper, language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withGroupSize(int newSize) {
        return new Overrides(groups, OptionalInt.of(newSize), runs, spare, hood, room, paper, language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withRuns(int newRuns) {
        return new Overrides(groups, groupSize, OptionalInt.of(newRuns), spare, hood, room, paper, language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withSpare(Typed newSpare) {
        return new Overrides(groups, groupSize, runs, Optional.of(newSpare), hood, room, paper, language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withHood(Setting.Hood newHood) {
        return new Overrides(groups, groupSize, runs, spare, Optional.of(newHood), room, paper, language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withRoom(Air newRoom) {
        return new Overrides(groups, groupSize, runs, spare, hood, newRoom, paper, language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withPaper(Paper newPaper) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, Optional.of(newPaper), language, country, school, section, date, onTheDay, versions);
    }

    public Overrides withLanguage(String newLanguage) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, Optional.of(newLanguage), country, school, section, date, onTheDay, versions);
    }

    public Overrides withCountry(String newCountry) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, language, Optional.of(newCountry), school, section, date, onTheDay, versions);
    }

    public Overrides withSchool(String newSchool) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, language, country, Optional.of(newSchool), section, date, onTheDay, versions);
    }

    public Overrides withSection(String newSection) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, language, country, school, Optional.of(newSection), date, onTheDay, versions);
    }

    public Overrides withDate(String newDate) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, language, country, school, section, Optional.of(newDate), onTheDay, versions);
    }

    public Overrides withOnTheDay(List<DayValue> newValues) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, language, country, school, section, date, newValues, versions);
    }

    public Overrides withVersions(int newVersions) {
        return new Overrides(groups, groupSize, runs, spare, hood, room, paper, language, country, school, section, date, onTheDay, OptionalInt.of(newVersions));
    }

    /** This, and what it does not say from another: the command line over a section, a section over its term. */
    public Overrides over(Overrides other) {
        List<DayValue> values = new ArrayList<>(onTheDay);
        other.onTheDay.stream().filter(o -> onTheDay.stream().noneMatch(v -> v.of().equals(o.of())))
                .forEach(values::add);
        return new Overrides(either(groups, other.groups), either(groupSize, other.groupSize), either(runs, other.runs), spare.or(other::spare),
                hood.or(other::hood), room.over(other.room), paper.or(other::paper), language.or(other::language), country.or(other::country),
                school.or(other::school), section.or(other::section), date.or(other::date), values, either(versions, other.versions));
    }

    private static OptionalInt either(OptionalInt first, OptionalInt second) {
        return first.isPresent() ? first : second;
    }
}
