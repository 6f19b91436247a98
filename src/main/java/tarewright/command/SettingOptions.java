package tarewright.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import picocli.CommandLine.Option;
import tarewright.finding.Found;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.Front.RoomFields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.quantity.Dimension;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.setting.DayValue;
import tarewright.setting.Overrides;
import tarewright.setting.Paper;
import tarewright.setting.Setting;
import tarewright.tables.ReferenceTables;
import tarewright.text.SourceText;
import tarewright.wording.FindingText;

/** Options that say what the print is for. */
final class SettingOptions {
    private static final int MOST_GROUPS = 10_000;
    private static final int MOST_RUNS = 100;

    @Option(names = "--groups", paramLabel = "N", description = "How many groups the class has, in the place of what the procedure says.")
    private Optional<Integer> groups;

    @Option(names = "--group-size", paramLabel = "N", description = "How many students are in a group.")
    private Optional<Integer> groupSize;

    @Option(names = "--runs", paramLabel = "N", description = "How often each group does it.")
    private Optional<Integer> runs;

    @Option(names = "--spare", paramLabel = "\"15 %\"", description = "How much is made beyond what the class needs, 0 %% to 100 %%.")
    private Optional<String> spare;

    @Option(names = "--paper", paramLabel = "A4|Letter", description = "The sheet of paper.")
    private Optional<String> paper;

    @Option(names = "--room", paramLabel = "\"21 °C; 98.9 kPa\"",
            description = "The room: temperature, air pressure, relative humidity, volume, told apart by their units.")
    private Optional<String> room;

    @Option(names = "--versions", paramLabel = "2..4", description = {"Versions A, B … of the questions' numbers, so that neighbours cannot copy each other's answers: a handout for each,",
        "one key with their answers side by side. What is done at the bench stays the same."})
    private Optional<Integer> versions;

    @Option(names = "--on-the-day", paramLabel = "\"strength of titrant is 0.1032 mol/L\"",
            description = "A value as it really is on the day, in the place of the one typed; several between semicolons, or the option again.")
    private List<String> onTheDay = List.of();

    /**
     * What the options override.
     *
     * @throws Inputs.Usage if one of them cannot be understood
     */
    Overrides overrides(FindingText words) {
        Overrides all = Overrides.NONE.withRoom(room.map(r -> air(r, words)).orElse(Overrides.Air.NONE)).withOnTheDay(onTheDay(words));
        all = whole("--groups", groups, MOST_GROUPS).map(all::withGroups).orElse(all);
        all = whole("--group-size", groupSize, MOST_GROUPS).map(all::withGroupSize).orElse(all);
        all = whole("--runs", runs, MOST_RUNS).map(all::withRuns).orElse(all);
        all = whole("--versions", versions, Setting.MOST_VERSIONS).map(all::withVersions).orElse(all);
        all = spare.map(SettingOptions::spare).map(all::withSpare).orElse(all);
        return paper.map(SettingOptions::paper).map(all::withPaper).orElse(all);
    }

    private static Optional<Integer> whole(String option, Optional<Integer> value, int most) {
        if (value.filter(v -> v < 1 || v > most).isPresent()) {
            throw new Inputs.Usage(option + " takes a whole number from 1 to " + most);
        }
        return value;
    }

    private static Typed spare(String typed) {
        if (QuantityText.parse(typed, Dimension.NONE) instanceof QuantityResult.Ok ok && ok.typed().si() >= 0 && ok.typed().si() <= 1) {
            return ok.typed();
        }
        throw new Inputs.Usage("--spare takes a share from 0 % to 100 %, not `" + typed + "`");
    }

    /** The tables are read for what was typed alone: they take longer than a short procedure does. */
    private List<DayValue> onTheDay(FindingText words) {
        return onTheDay.isEmpty() ? List.of() : read("--on-the-day", String.join("; ", onTheDay), words, DeclarationReader::onTheDay);
    }

    private static Paper paper(String word) {
        try {
            return Paper.valueOf(word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new Inputs.Usage("--paper takes A4 or Letter, not `" + word + "`");
        }
    }

    private static Overrides.Air air(String typed, FindingText words) {
        RoomFields room = read("--room", typed, words, DeclarationReader::room);
        return new Overrides.Air(room.temperature().map(At::value), room.pressure().map(At::value), room.humidity().map(At::value),
                room.volume().map(At::value));
    }

    private static <T> T read(String option, String typed, FindingText words, BiFunction<List<Piece>, ReferenceTables, Found<T>> how) {
        SourceText text = new SourceText(option, typed);
        Found<T> found = how.apply(new Piece(typed, text.span(0, typed.length())).split(';'), PackedTables.chemistry());
        if (!found.findings().isEmpty()) {
            throw new Inputs.Usage(words.report(found.findings()).strip());
        }
        return found.value();
    }
}
