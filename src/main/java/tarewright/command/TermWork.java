package tarewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.DeclareFinding;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.declare.Term;
import tarewright.procedure.check.LessonChecks;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.setting.DayValue;
import tarewright.setting.Overrides;
import tarewright.setting.Paper;
import tarewright.term.Lot;
import tarewright.term.Program;
import tarewright.text.Spelling;

/** A term taken apart into one piece of work for each section and procedure. */
final class TermWork {
    private final Path file;
    private final Overrides commandLine;
    private final Term term;
    private final Disk disk;
    private final Workshop shared;
    private final List<Finding> findings;

    /** One procedure for one section. */
    record Each(Term.Section section, InputFile input, Found<Resolved> found, Workshop workshop) {
    }

    private TermWork(Path file, Found<Term> read, Overrides commandLine, Disk disk, Workshop shared) {
        this.file = file;
        this.term = read.value();
        this.findings = read.findings();
        this.commandLine = commandLine;
        this.disk = disk;
        this.shared = shared;
    }

    /** Reads a term's file. @param commandLine goes before what a section says */
    static TermWork of(Path file, Overrides commandLine, Disk disk) {
        Workshop shared = new Workshop(disk, commandLine);
        return new TermWork(file, shared.term(new InputFile(file, file.toString())), commandLine, disk, shared);
    }

    /** What is wrong with the term's own file. */
    List<Finding> findings() {
        return findings;
    }

    List<StockBlock> stocks() {
        return term.stocks();
    }

    Path file() {
        return file;
    }

    Term.Copies copies(Term.Section section) {
        return section.copies().or(term::copies).orElse(Term.Copies.EACH_GROUP);
    }

    /**
     * The sections that are wanted; all where none is named.
     *
     * @throws Inputs.Usage if one is named that the term does not have, or two would print into one folder
     */
    List<Term.Section> sections(List<String> wanted) {
        Map<String, Term.Section> byName = new LinkedHashMap<>();
        Map<String, Term.Section> byFolder = new LinkedHashMap<>();
        for (Term.Section section : term.sections()) {
            byName.putIfAbsent(section.name(), section);
            Term.Section earlier = byFolder.putIfAbsent(folder(section).toLowerCase(Locale.ROOT), section);
            if (earlier != null) {
                throw new Inputs.Usage("the sections `" + earlier.name() + "` and `" + section.name() + "` would print into the same folder; rename one");
            }
        }
        for (String name : wanted) {
            if (!byName.containsKey(name)) {
                List<String> near = Spelling.nearInAnyCase(name, byName.keySet());
                throw new Inputs.Usage("`" + file + "` has no section `" + name + "`; it has "
                        + String.join(", ", (near.isEmpty() ? byName.keySet() : near).stream().map(n -> "`" + n + "`").toList()));
            }
        }
        return byName.values().stream().filter(s -> wanted.isEmpty() || wanted.contains(s.name())).toList();
    }

    /** The folder of a section below the output folder: its name, with what no file name may hold made a hyphen. */
    static String folder(Term.Section section) {
        String folder = section.name().replaceAll("[^\\p{L}\\p{N}_.-]+", "-").replaceAll("^[.]+", "");
        return folder.isEmpty() ? "section" : folder;
    }

    /** Which documents the term asks for; empty where it does not say. */
    Set<Sheet.Kind> kinds() {
        Set<Sheet.Kind> kinds = EnumSet.noneOf(Sheet.Kind.class);
        term.documents().forEach(d -> kinds.add(Sheet.Kind.valueOf(d.value().toUpperCase(Locale.ROOT))));
        return kinds;
    }

    String school() {
        return term.school();
    }

    /** Works a section out, procedure by procedure; what is wrong with the section itself goes into {@code findings}. */
    List<Each> work(Term.Section section, List<Finding> findings) {
        if (section.bad()) {
            return List.of();
        }
        List<Piece> names = section.procedures().isEmpty() ? term.procedures() : section.procedures();
        if (names.isEmpty()) {
            findings.add(new TermFinding.NothingToDo(section.name(), section.at()));
        }
        Overrides overrides = commandLine.over(overrides(section));
        Workshop workshop = shared.ofSeveral(overrides, term.stocks(), term.labels());
        List<Each> all = new ArrayList<>();
        for (Piece name : names) {
            Optional<Path> path = path(name.text());
            if (path.isPresent()) {
                InputFile input = new InputFile(path.get(), path.get().toString());
                all.add(new Each(section, input, workshop.resolve(input), workshop));
            } else {
                findings.add(new TermFinding.NoSuchProcedure(name.text(), Spelling.nearInAnyCase(name.text(), beside()), name.span()));
            }
        }
        List<Resolved> lesson = all.stream().filter(e -> !e.found().hasErrors()).map(e -> e.found().value()).toList();
        if (lesson.size() > 1) {
            Each first = all.stream().filter(e -> !e.found().hasErrors()).findFirst().orElseThrow();
            findings.addAll(LessonChecks.run(lesson, workshop.country(first.input(), lesson.get(0)).rules()));
        }
        Set<DayValue> unmet = new LinkedHashSet<>(overrides.onTheDay());
        unmet.removeAll(workshop.met());
        unmet.forEach(v -> findings.add(new DeclareFinding.UnknownDayValue(v.of(), List.of(), List.of(), v.name())));
        return all;
    }

    /** What is printed of one procedure for one section; only where it has no errors. */
    Lot lot(Each each, Set<Sheet.Kind> kinds, boolean large, Program program) {
        String footer = Stream.of(term.school(), each.section().name()).filter(w -> !w.isEmpty()).collect(Collectors.joining(" · "));
        return each.workshop().lot(folder(each.section()), each.input(), each.found(), kinds, large, footer, program);
    }

    static boolean hasErrors(List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    }

    private Overrides overrides(Term.Section section) {
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

    /** A procedure beside the term, with or without its ending; a name goes nowhere else. */
    private Optional<Path> path(String name) {
        String plain = name.endsWith(".md") ? name.substring(0, name.length() - 3) : name;
        return beside().contains(plain) ? Optional.of(file.resolveSibling(plain + ".md")) : Optional.empty();
    }

    private List<String> beside() {
        Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of(""));
        try {
            return disk.list(folder.toString().isEmpty() ? Path.of(".") : folder).stream().map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".md") && !n.equals(file.getFileName().toString())).map(n -> n.substring(0, n.length() - 3)).toList();
        } catch (java.io.IOException e) {
            return List.of();
        }
    }
}
