package tarewright.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.procedure.declare.Term;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.resolve.Resolved;
import tarewright.term.Comparison;
import tarewright.term.Lot;
import tarewright.term.LotRecord;
import tarewright.term.Manifest;
import tarewright.term.Program;
import tarewright.term.Sections;
import tarewright.term.TermLot;
import tarewright.wording.FindingText;

/** {@code changes}: what would be printed now beside what was printed last, in words. Writes nothing. */
@Command(name = "changes", sortOptions = false, description = {"Says what would differ from the last print, before anything is copied.",
    "Without a file, every procedure that `print` would print."})
final class ChangesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Option(names = "--term", paramLabel = "FILE", description = "A term: every section's procedures; what moves alike in every section is said once.")
    private Optional<Path> term = Optional.empty();
    @Option(names = "--out", paramLabel = "FOLDER", defaultValue = "out", description = "Where the last print is (${DEFAULT-VALUE}).")
    private Path out = Path.of("out");
    @Option(names = "--against", paramLabel = "MANIFEST", description = {"Another print to compare with: a file of its folder `manifest`, that folder,",
        "or the output folder that it lies in."})
    private Optional<Path> against = Optional.empty();
    @Mixin
    private SettingOptions setting = new SettingOptions();
    @Option(names = "--json", description = "As JSON, one object for each procedure.")
    private boolean json;
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;
    private final ChangesText text = new ChangesText();
    private final FindingText words = FindingText.in("en");
    private final Disk disk = new Disk();

    @Override
    public Integer call() throws Exception {
        if (term.isPresent() && (!files.isEmpty() || !disk.isFile(term.get()))) {
            throw new Inputs.Usage(files.isEmpty() ? "there is no file `" + term.get() + "`" : "a term names its procedures itself; leave the others out");
        }
        Manifest before = before();
        List<Comparison> all = term.isPresent() ? ofTerm(term.get(), before) : ofProcedures(before);
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            for (Comparison each : all) {
                console.println(node(each));
            }
            if (whole.isPresent()) {
                console.println(node(whole.get()).replaceFirst("\\{\"procedure\"", "{\"term\""));
            }
        } else if (term.isPresent()) {
            Map<String, List<Comparison>> byProcedure = new LinkedHashMap<>();
            all.forEach(c -> byProcedure.computeIfAbsent(c.procedure(), p -> new ArrayList<>()).add(c));
            byProcedure.values().forEach(p -> text.term(p).forEach(console::println));
            whole.ifPresent(w -> text.whole(w).forEach(console::println));
        } else {
            all.forEach(c -> text.alone(c).forEach(console::println));
        }
        return bad || all.stream().anyMatch(c -> c.state() == Comparison.State.BAD) ? Main.ERRORS : Main.CLEAN;
    }

    /** Whether something of the term itself could not be read, so that sections or procedures of it are not compared. */
    private boolean bad;
    /** The order list and the prep sheet of the term, where it prints them. */
    private Optional<Comparison> whole = Optional.empty();

    private List<Comparison> ofProcedures(Manifest before) {
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        Program program = Program.running();
        List<Comparison> all = new ArrayList<>();
        for (InputFile file : new Inputs(disk).find(files.isEmpty() ? List.of(PrintCommand.usualInput(disk)) : files)) {
            Found<Resolved> found = workshop.resolve(file);
            if (found.hasErrors()) {
                tell(found.findings());
                all.add(Comparison.bad("", file.name()));
            } else {
                all.add(compare(before, workshop.lot(file, found, EnumSet.of(Sheet.Kind.HANDOUT), false, program)));
            }
        }
        return files.isEmpty() ? withGone(all, before.records().stream().filter(r -> r.section().isEmpty() && !r.isOfTerm()).toList()) : all;
    }

    private List<Comparison> ofTerm(Path file, Manifest before) {
        TermWork work = TermWork.of(file, setting.overrides(words), disk);
        Program program = Program.running();
        tell(work.findings());
        bad = TermWork.hasErrors(work.findings());
        List<Comparison> all = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        for (Term.Section section : work.sections(List.of())) {
            List<Finding> its = new ArrayList<>();
            List<TermWork.Each> each = work.work(section, its);
            tell(its.stream().filter(f -> f.severity() == tarewright.finding.Severity.ERROR).toList());
            bad |= section.bad() || TermWork.hasErrors(its);
            for (TermWork.Each one : each) {
                tell(one.found().hasErrors() ? one.found().findings() : List.of());
                if (!one.found().hasErrors()) {
                    needs.add(work.need(one));
                }
                all.add(one.found().hasErrors() ? Comparison.bad(Sections.folder(section), one.input().name())
                        : compare(before, work.lot(one, EnumSet.of(Sheet.Kind.HANDOUT), false, program)));
            }
        }
        if (!bad && !needs.isEmpty() && all.stream().noneMatch(c -> c.state() == Comparison.State.BAD)) {
            whole = ofTheWhole(work, work.whole(needs, program), before);
        }
        // A section or a procedure that cannot be read has not left the term.
        return bad ? all : withGone(all, before.records().stream().filter(r -> !r.section().isEmpty()).toList());
    }

    /** Where the term prints them or has printed them. */
    private Optional<Comparison> ofTheWhole(TermWork work, TermLot now, Manifest before) {
        Optional<LotRecord> old = before.record("", now.name()).filter(LotRecord::isOfTerm);
        boolean wanted = work.kinds().contains(Sheet.Kind.PREP) || old.isPresent();
        return Optional.of(Comparison.of(old, now, against.isPresent() ? List.of() : old.map(r -> Manifest.altered(r, out)).orElse(List.of()))).filter(c -> wanted);
    }

    private static List<Comparison> withGone(List<Comparison> all, List<LotRecord> before) {
        List<Comparison> gone = before.stream().filter(r -> all.stream().noneMatch(c -> c.section().equals(r.section()) && c.procedure().equals(r.procedure())))
                .map(Comparison::gone).toList();
        return Stream.concat(all.stream(), gone.stream()).toList();
    }

    private Comparison compare(Manifest before, Lot now) {
        Optional<LotRecord> old = before.record(now.folder(), now.name());
        return Comparison.of(old, now, against.isPresent() ? List.of() : old.map(r -> Manifest.altered(r, out)).orElse(List.of()));
    }

    private void tell(List<Finding> findings) {
        findings.forEach(f -> spec.commandLine().getErr().println(words.full(f)));
    }

    private static String node(Comparison each) throws JsonProcessingException {
        Map<String, Object> node = new LinkedHashMap<>();
        node.put("procedure", each.procedure());
        if (!each.section().isEmpty()) {
            node.put("section", each.section());
        }
        node.put("state", switch (each.state()) {
            case NEW -> "new";
            case UNCHANGED -> "unchanged";
            case UNTOUCHED, DIGITS, MOVED -> "changed";
            case GONE -> "gone";
            case BAD -> "error";
        });
        each.before().ifPresent(v -> node.put("before", v));
        each.now().ifPresent(v -> node.put("version", v));
        if (each.before().isPresent() && each.now().isPresent()) {
            node.put("inputs", each.inputs());
            node.put("altered", each.altered());
            node.put("changes", each.changes());
        }
        return new ObjectMapper().writeValueAsString(node);
    }

    private Manifest before() throws IOException {
        Path from = against.orElse(out);
        if (against.isPresent() && !Files.exists(from)) {
            throw new Inputs.Usage("there is no manifest `" + from + "`");
        }
        Manifest manifest = Manifest.of(from);
        if (Files.isRegularFile(from) && manifest.records().isEmpty()) {
            throw new Inputs.Usage("`" + from + "` is no manifest");
        }
        return manifest;
    }
}
