package tarewright.term;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import tarewright.document.Sheet;
import tarewright.print.Format;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Term;
import tarewright.procedure.resolve.Resolved;
import tarewright.setting.Overrides;
import tarewright.setting.Paper;

/** What a term says of each of its sections: its folder, what goes before a procedure's own values, how often which file is copied. */
public final class Sections {
    private static final List<Sheet.Kind> COPYING_ORDER = List.of(Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS, Sheet.Kind.HANDOUT);

    private final Term term;

    public Sections(Term term) {
        this.term = term;
    }

    /** The folder of a section below the output folder: its name, with what no file name may hold made a hyphen. */
    public static String folder(Term.Section section) {
        String folder = section.name().replaceAll("[^\\p{L}\\p{N}_.-]+", "-").replaceAll("^[.]+", "");
        return folder.isEmpty() ? "section" : folder;
    }

    /** What a section says goes before what the term says, and both before the procedure. */
    public Overrides overrides(Term.Section section) {
        Overrides.Air air = new Overrides.Air(section.room().temperature().map(At::value), section.room().pressure().map(At::value),
                section.room().humidity().map(At::value), section.room().volume().map(At::value));
        Overrides all = Overrides.NONE.withRoom(air).withSection(section.name()).withOnTheDay(section.onTheDay());
        all = section.groups().isPresent() ? all.withGroups(section.groups().getAsInt()) : all;
        all = section.groupSize().isPresent() ? all.withGroupSize(section.groupSize().getAsInt()) : all;
        all = section.date().map(all::withDate).orElse(all);
        OptionalInt versions = section.versions().isPresent() ? section.versions() : term.versions();
        all = versions.isPresent() ? all.withVersions(versions.getAsInt()) : all;
        all = section.spare().or(term::spare).map(At::value).map(all::withSpare).orElse(all);
        all = term.school().isEmpty() ? all : all.withSchool(term.school());
        all = term.paper().map(Paper::valueOf).map(all::withPaper).orElse(all);
        all = term.language().map(all::withLanguage).orElse(all);
        return term.country().map(all::withCountry).orElse(all);
    }

    /**
     * How many copies of each handout file a section takes. Where amounts are dealt a file holds a handout for each group that gets another and serves as many groups; versions
     * of the questions' numbers go round in turn.
     */
    public int handouts(Term.Section section, Resolved procedure) {
        int hands = procedure.hands().size();
        int versions = procedure.eachVersion().size();
        int rounds = (procedure.setting().groups() + hands - 1) / hands;
        return switch (section.copies().or(term::copies).orElse(Term.Copies.EACH_GROUP)) {
            case EACH_GROUP -> (rounds + versions - 1) / versions;
            case EACH_STUDENT -> (rounds * procedure.setting().groupSize() + versions - 1) / versions;
            case ONE -> 1;
        };
    }

    /** How often each file of a lot is copied: what the teacher and the technician need first, then a handout for each. @param kinds that are printed */
    public Map<String, Integer> copies(Term.Section section, Lot lot, Set<Sheet.Kind> kinds) {
        Map<String, Integer> copies = new LinkedHashMap<>();
        COPYING_ORDER.stream().filter(kinds::contains).forEach(k -> lot.files(k, Format.PDF)
                .forEach(f -> copies.put(f, k == Sheet.Kind.HANDOUT ? handouts(section, lot.procedure()) : 1)));
        return copies;
    }
}
