package tarewright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.DeclareFinding;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.declare.Term;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.resolve.Resolved;
import tarewright.setting.DayValue;
import tarewright.setting.Overrides;
import tarewright.term.Lesson;
import tarewright.term.Lot;
import tarewright.term.Program;
import tarewright.term.Sections;
import tarewright.term.TermFinding;
import tarewright.term.TermLot;
import tarewright.text.Outside;
import tarewright.text.Spelling;

/** A term taken apart into one piece of work for each section and procedure. */
final class TermWork {
    private final Path file;
    private final Overrides commandLine;
    private final Term term;
    private final Outside disk;
    private final Workshop shared;
    private final List<Finding> findings;

    /** One procedure for one section. */
    record Each(Term.Section section, Term.Entry entry, InputFile input, Found<Resolved> found, Workshop workshop) {
        /** The day on which it is done, where that is told. */
        Optional<String> date() {
            return entry.date().or(section::date);
        }
    }

    private TermWork(Path file, Found<Term> read, Overrides commandLine, Outside disk, Workshop shared) {
        this.file = file;
        this.term = read.value();
        this.findings = read.findings();
        this.commandLine = commandLine;
        this.disk = disk;
        this.shared = shared;
    }

    /** Reads a term's file. @param commandLine goes before what a section says */
    static TermWork of(Path file, Overrides commandLine, Outside disk) {
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

    /** What the term says of each section. */
    Sections sections() {
        return new Sections(term);
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
            // A name that is given twice is a finding, at its place.
            if (byName.putIfAbsent(section.name(), section) != null) {
                continue;
            }
            Term.Section earlier = byFolder.putIfAbsent(Sections.folder(section).toLowerCase(Locale.ROOT), section);
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

    /** Which documents the term asks for; where it does not say, all that teacher, students and technician need for a class. */
    Set<Sheet.Kind> kinds() {
        Set<Sheet.Kind> kinds = EnumSet.noneOf(Sheet.Kind.class);
        if (term.documents().isEmpty()) {
            return EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS);
        }
        term.documents().forEach(d -> kinds.add(Sheet.Kind.valueOf(d.value().toUpperCase(Locale.ROOT))));
        return kinds;
    }

    /** The term's name. */
    Optional<String> title() {
        return term.title().map(At::value);
    }

    String school() {
        return term.school();
    }

    /** Works a section out, procedure by procedure; what is wrong with the section itself goes into {@code findings}. */
    List<Each> work(Term.Section section, List<Finding> findings) {
        if (section.bad()) {
            return List.of();
        }
        List<Term.Entry> entries = section.procedures().isEmpty() ? term.procedures() : section.procedures();
        if (entries.isEmpty()) {
            findings.add(new TermFinding.NothingToDo(section.name(), section.at()));
        }
        Overrides overrides = commandLine.over(sections().overrides(section));
        Set<DayValue> unmet = new LinkedHashSet<>(overrides.onTheDay());
        Map<Optional<String>, Workshop> byDay = new LinkedHashMap<>();
        List<Each> all = new ArrayList<>();
        for (Term.Entry entry : entries) {
            Optional<Path> path = path(entry.name().text());
            if (path.isPresent()) {
                InputFile input = new InputFile(path.get(), path.get().toString());
                Optional<String> date = entry.date().or(section::date);
                Workshop workshop = byDay.computeIfAbsent(date, d -> shared.ofSeveral(d.map(overrides::withDate).orElse(overrides), term.stocks(), term.labels()));
                all.add(new Each(section, entry, input, workshop.resolve(input), workshop));
                unmet.removeAll(workshop.met());
            } else {
                String text = entry.name().text();
                Optional<String> apart = text.contains(",") ? Optional.of(text.replaceAll(",\\s*", "; ")) : Optional.empty();
                findings.add(new TermFinding.NoSuchProcedure(text, apart, Spelling.nearInAnyCase(text, beside()), entry.name().span()));
            }
        }
        byDay.keySet().forEach(date -> lesson(section, all.stream().filter(e -> e.date().equals(date)).toList(), findings));
        overrides.onTheDay().forEach(v -> meantForOne(v, all).ifPresent(findings::add));
        unmet.forEach(v -> findings.add(new DeclareFinding.UnknownDayValue(v.of(), List.of(), List.of(), v.name())));
        return all;
    }

    /** A value that names no procedure and would change several at once: one bottle was read, and nothing tells which. */
    private static Optional<Finding> meantForOne(DayValue value, List<Each> all) {
        List<String> has = all.stream().filter(e -> value.within(e.input().name()).isEmpty()
                && DeclarationReader.has(e.found().value().procedure().source(), e.input().name(), value)).map(e -> e.input().name()).distinct().toList();
        return has.size() < 2 ? Optional.empty()
                : Optional.of(new DeclareFinding.DayValueInSeveral(value.of(), has, value.of() + " in " + has.get(0) + " is " + value.value(), value.name()));
    }

    /** The procedures of one day are one lesson. */
    private static void lesson(Term.Section section, List<Each> day, List<Finding> findings) {
        List<Each> sound = day.stream().filter(e -> !e.found().hasErrors()).toList();
        if (sound.size() < 2) {
            return;
        }
        Each first = sound.get(0);
        Lesson together = new Lesson(section, sound.stream().map(e -> new Lesson.Part(e.found().value(), e.entry().date().isPresent())).toList());
        findings.addAll(together.findings(first.workshop().country(first.input(), first.found().value()).rules()));
    }

    /** What is printed of one procedure for one section; only where it has no errors. */
    Lot lot(Each each, Set<Sheet.Kind> kinds, boolean large, Program program) {
        String footer = Stream.of(term.school(), each.section().name()).filter(w -> !w.isEmpty()).collect(Collectors.joining(" · "));
        return each.workshop().lot(Sections.folder(each.section()), each.input(), each.found(), kinds, large, footer, program);
    }

    /** What the technician gets ready of it. */
    Need need(Each each) {
        return new Need(each.section().name(), each.found().value(), term.stocks(), each.workshop().country(each.input(), each.found().value()).rules());
    }

    /** What the whole term has. @param needs of every section; at least one */
    TermLot whole(List<Need> needs, Program program) {
        String name = new InputFile(file, "").name();
        return TermLot.of(name, title().orElse(name), needs, term.stocks(), term.school(), program);
    }

    static boolean hasErrors(List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
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
                    .filter(n -> n.endsWith(".md") && !n.equals(file.getFileName().toString()) && !n.equals(Workshop.STOCK)).map(n -> n.substring(0, n.length() - 3)).toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
