package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.print.BrokenTemplate;
import tarewright.print.Format;
import tarewright.print.PdfPrinter;
import tarewright.print.Presses;
import tarewright.print.Templates;
import tarewright.procedure.declare.Term;
import tarewright.procedure.resolve.Resolved;
import tarewright.term.Lot;
import tarewright.term.OutputLock;
import tarewright.term.Printing;
import tarewright.term.Program;
import tarewright.term.Share;
import tarewright.wording.FindingText;

/** {@code print}: procedures to PDF files. A procedure with an error prints nothing, and what was there of it stays. */
@Command(name = "print", sortOptions = false, description = {"Prints procedures: student handout, teacher's key and safety panel of each, as PDF.",
    "Without a file, every procedure in the folder `procedures`, or those that travel with the program if there is no such folder."})
final class PrintCommand implements Callable<Integer> {
    private static final String STAYS = "nothing; what was there stays";
    private static final Path USUAL_INPUT = Path.of("procedures");
    private static final List<Sheet.Kind> KINDS = List.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY);

    /** What can be asked for. */
    private static final List<Sheet.Kind> ALL = List.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP,
            Sheet.Kind.LABELS, Sheet.Kind.MISSED, Sheet.Kind.MISSED_KEY);
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Option(names = "--out", paramLabel = "FOLDER", defaultValue = "out", description = "Where the PDF files go (${DEFAULT-VALUE}).")
    private Path out = Path.of("out");
    @Option(names = "--only", paramLabel = "KIND,…", split = ",", description = "Only these documents: handout, key, safety, prep, labels, missed, missed-key.")
    private List<String> only = List.of();
    @Option(names = "--large", description = "The handout and the safety panel in large print (18 points and more) as well.")
    private boolean large;
    @Option(names = "--term", paramLabel = "FILE", description = "A term: every section's procedures, each section into a folder of its own.")
    private Optional<Path> term = Optional.empty();
    @Option(names = "--section", paramLabel = "NAME", description = "Only this section of the term; the option again for another one.")
    private List<String> sections = List.of();
    @Option(names = "--part", paramLabel = "3/16", description = "Only the third of sixteen equal shares of the term's sections, for as many machines.")
    private Optional<String> part = Optional.empty();
    @Option(names = "--missed", description = {"For a student who missed the class as well: a handout with supplied readings, and a key to them.",
        "What is printed otherwise is printed too; with --only missed,missed-key it is these two alone."})
    private boolean missed;
    @Option(names = "--seed", paramLabel = "NUMBER", description = "Other supplied readings for each number; without it they follow from the version code.")
    private Optional<Long> seed = Optional.empty();
    @Option(names = "--as", paramLabel = "FORMAT,…", split = ",",
            description = "pdf (the usual), html (one page for a browser of each document), docx (the handout, to be changed by hand).")
    private List<String> as = List.of("pdf");
    @Mixin
    private SettingOptions setting = new SettingOptions();
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;

    @Override
    public Integer call() {
        PrintWriter console = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Set<Sheet.Kind> kinds = kinds();
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new Inputs.Usage("--out takes a folder; `" + out + "` is a file");
        }
        FindingText words = FindingText.in("en");
        Disk disk = new Disk();
        if (term.isPresent()) {
            return term(term.get(), disk, words, console, err);
        }
        if (!sections.isEmpty() || part.isPresent()) {
            throw new Inputs.Usage("--section and --part are of a term; say which with --term FILE");
        }
        formats(kinds);
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        List<InputFile> inputs = new Inputs(disk).find(files.isEmpty() ? List.of(usualInput(disk)) : files);
        checkNames(inputs);
        try (OutputLock lock = lock(err)) {
            return lock == null ? Main.ERRORS : print(inputs, workshop, kinds, words, console, err);
        } catch (IOException e) {
            err.println(CannotWrite.says(out, e));
            return Main.ERRORS;
        }
    }

    private int term(Path file, Disk disk, FindingText words, PrintWriter console, PrintWriter err) {
        if (!files.isEmpty() || !disk.isFile(file)) {
            throw new Inputs.Usage(files.isEmpty() ? "there is no file `" + file + "`" : "a term names its procedures itself; leave the others out");
        }
        Share share = part.map(p -> Share.read(p).orElseThrow(() -> new Inputs.Usage("--part takes a share such as 3/16, not `" + p + "`")))
                .orElse(new Share(1, 1));
        TermWork work = TermWork.of(file, setting.overrides(words), disk);
        List<Term.Section> mine = share.from(work.sections(sections));
        work.findings().forEach(f -> err.println(words.full(f)));
        Set<Sheet.Kind> kinds = only.isEmpty() ? EnumSet.copyOf(work.kinds()) : kinds();
        if (missed) {
            kinds.addAll(List.of(Sheet.Kind.MISSED, Sheet.Kind.MISSED_KEY));
        }
        try (OutputLock lock = lock(err)) {
            boolean whole = sections.isEmpty() && share.of() == 1;
            return lock == null ? Main.ERRORS : new TermPrint(work, kinds, formats(kinds), large, out, words).print(mine, whole, console, err);
        } catch (IOException e) {
            err.println(CannotWrite.says(out, e));
            return Main.ERRORS;
        }
    }

    /** Told and null where another print is under way or nothing can be written. */
    private OutputLock lock(PrintWriter err) throws IOException {
        Optional<OutputLock> lock = OutputLock.of(out);
        if (lock.isEmpty()) {
            err.println("tarewright: another print into `" + out + "` is under way; wait until it has ended, or choose another folder with --out. "
                    + "Nothing was changed.");
        }
        return lock.orElse(null);
    }

    private int print(List<InputFile> inputs, Workshop workshop, Set<Sheet.Kind> kinds, FindingText words, PrintWriter console, PrintWriter err) {
        Program program = Program.running();
        Printing printing = new Printing(out, program.build());
        Table table = new Table();
        Map<Path, Presses> presses = new LinkedHashMap<>();
        // Typefaces take as long to read as a procedure, and need nothing of it.
        inputs.stream().findFirst().ifPresent(i -> presses(presses, i));
        Progress progress = new Progress(err);
        boolean errors = false;
        int done = 0;
        for (InputFile input : inputs) {
            progress.at(done++, inputs.size(), input.name());
            Found<Resolved> found = workshop.resolve(input);
            progress.end();
            found.findings().forEach(f -> err.println(words.full(f)));
            if (found.hasErrors()) {
                errors = true;
                table.row(input.name(), STAYS, count(found, Severity.ERROR), count(found, Severity.WARNING));
                continue;
            }
            Lot lot = workshop.lot("", input, found, kinds, large, "", program, seed);
            List<Finding> seen = new ArrayList<>();
            Optional<String> written = print(printing, lot, presses(presses, input), err, seen);
            seen.forEach(f -> err.println(words.full(f)));
            errors |= written.isEmpty();
            table.row(input.name(), written.orElse(STAYS), written.isEmpty() ? 1 : 0, count(found, Severity.WARNING) + seen.size());
        }
        console.print(table.text(out.toString()));
        return errors ? Main.ERRORS : Main.CLEAN;
    }

    private static Presses presses(Map<Path, Presses> all, InputFile input) {
        return all.computeIfAbsent(Workshop.templates(input), f -> Presses.begun(() -> new PdfPrinter(Templates.over(f))));
    }

    /** The folder {@code procedures} here; where there is none, the procedures that travel with the program. */
    static Path usualInput(Disk disk) {
        return disk.isFolder(USUAL_INPUT) ? USUAL_INPUT : PackedProcedures.folder().orElse(USUAL_INPUT);
    }

    /** Every sheet is complete before the first file of the procedure is replaced. @param seen takes what only the laid-out pages show */
    private Optional<String> print(Printing printing, Lot lot, Presses presses, PrintWriter err, List<Finding> seen) {
        try {
            Printing.Outcome outcome = printing.print(lot, formats(lot.kinds()), presses);
            outcome.printed().forEach(d -> Remarks.tell(lot, d, err));
            outcome.printed().stream().filter(d -> d.kind() == Sheet.Kind.HANDOUT && !d.large())
                    .forEach(d -> HandoutLong.of(lot.procedure(), d.printed().pages()).filter(f -> !seen.contains(f)).ifPresent(seen::add));
            String written = Remarks.written(outcome);
            if (lot.kinds().contains(Sheet.Kind.MISSED) && !written.contains(Sheet.Kind.MISSED.word())) {
                err.println("tarewright: " + lot.name() + ": nothing is read here that could be supplied to a student who missed the class; declare `reading` blocks");
            }
            return Optional.of(written);
        } catch (BrokenTemplate e) {
            err.println("tarewright: " + Remarks.broken(e));
        } catch (IOException e) {
            err.println(CannotWrite.says(out, e));
        }
        return Optional.empty();
    }

    private Set<Sheet.Kind> kinds() {
        Set<Sheet.Kind> kinds = EnumSet.noneOf(Sheet.Kind.class);
        for (String word : only) {
            kinds.add(ALL.stream().filter(k -> k.word().equals(word.strip().toLowerCase(Locale.ROOT))).findFirst()
                    .orElseThrow(() -> new Inputs.Usage("--only takes handout, key, safety, prep, labels, missed, missed-key, not `" + word + "`")));
        }
        if (kinds.isEmpty()) {
            kinds.addAll(KINDS);
        }
        if (missed) {
            kinds.add(Sheet.Kind.MISSED);
            kinds.add(Sheet.Kind.MISSED_KEY);
        }
        return kinds;
    }

    private Set<Format> formats(Set<Sheet.Kind> kinds) {
        Set<Format> formats = EnumSet.noneOf(Format.class);
        for (String word : as) {
            formats.add(Arrays.stream(Format.values()).filter(f -> f.word().equals(word.strip().toLowerCase(Locale.ROOT))).findFirst()
                    .orElseThrow(() -> new Inputs.Usage("--as takes pdf, html, docx, not `" + word + "`")));
        }
        if (formats.contains(Format.DOCX) && !kinds.contains(Sheet.Kind.HANDOUT)) {
            throw new Inputs.Usage("--as docx is for the handout, which --only leaves out");
        }
        return formats;
    }

    /** Two procedures of one name would print over each other. */
    private static void checkNames(List<InputFile> inputs) {
        Map<String, InputFile> seen = new LinkedHashMap<>();
        for (InputFile input : inputs) {
            InputFile earlier = seen.put(input.name().toLowerCase(Locale.ROOT), input);
            if (earlier != null && !earlier.path().equals(input.path())) {
                throw new Inputs.Usage("`" + earlier.shown() + "` and `" + input.shown() + "` would print to the same files; rename one");
            }
        }
    }

    private static int count(Found<Resolved> found, Severity severity) {
        return (int) found.findings().stream().filter(f -> f.severity() == severity).count();
    }
}
