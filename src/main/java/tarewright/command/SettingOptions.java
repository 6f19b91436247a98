package tarewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Option;
import tarewright.finding.Found;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.Front.RoomFields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.setting.Overrides;
import tarewright.setting.Paper;
import tarewright.tables.Tables;
import tarewright.text.SourceText;
import tarewright.wording.FindingText;

/** Options that say what the print is for. */
final class SettingOptions {
    private static final int MOST_GROUPS = 10_000;

    @Option(names = "--groups", paramLabel = "N", description = "How many groups the class has, in the place of what the procedure says.")
    private Optional<Integer> groups;

    @Option(names = "--paper", paramLabel = "A4|Letter", description = "The sheet of paper.")
    private Optional<String> paper;

    @Option(names = "--room", paramLabel = "\"21 °C; 98.9 kPa\"",
            description = "The room: temperature, air pressure, relative humidity, volume, told apart by their units.")
    private Optional<String> room;

    /**
     * What the options override.
     *
     * @throws Inputs.Usage if one of them cannot be understood
     */
    Overrides overrides(FindingText words) {
        if (groups.filter(g -> g < 1 || g > MOST_GROUPS).isPresent()) {
            throw new Inputs.Usage("--groups takes a whole number from 1 to " + MOST_GROUPS);
        }
        Optional<Paper> sheet = paper.map(SettingOptions::paper);
        RoomFields air = room.map(r -> room(r, words)).orElse(RoomFields.NONE);
        return new Overrides(groups.map(OptionalInt::of).orElse(OptionalInt.empty()), sheet, air.temperature().map(At::value),
                air.pressure().map(At::value), air.humidity().map(At::value), air.volume().map(At::value));
    }

    private static Paper paper(String word) {
        try {
            return Paper.valueOf(word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new Inputs.Usage("--paper takes A4 or Letter, not `" + word + "`");
        }
    }

    private static RoomFields room(String typed, FindingText words) {
        SourceText text = new SourceText("--room", typed);
        List<Piece> pieces = new ArrayList<>(new Piece(typed, text.span(0, typed.length())).split(';'));
        Found<RoomFields> found = DeclarationReader.room(pieces, Tables.load());
        if (!found.findings().isEmpty()) {
            throw new Inputs.Usage(words.report(found.findings()).strip());
        }
        return found.value();
    }
}
