package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
import tarewright.print.PdfPrinter;
import tarewright.print.Printed;
import tarewright.print.Templates;
import tarewright.procedure.resolve.Resolved;
import tarewright.term.Lot;
import tarewright.term.LotDocument;
import tarewright.wording.FindingText;

/** {@code print}: procedures to PDF files. A procedure with an error prints nothing, and what was there of it stays. */
@Command(name = "print", sortOptions = false, description = {"Prints procedures: student handout, teacher's key and safety panel of each, as PDF.",
    "Without a file, every procedure in the folder `procedures`, or those that travel with the program if there is no such folder."})
final class PrintCommand implements Callable<Integer> {
    private static final Path USUAL_INPUT = Path.of("procedures");
    private static final List<Sheet.Kind> KINDS = List.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY);

    /** What can be asked for. */
    private static final List<Sheet.Kind> ALL = List.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP,
            Sheet.Kind.LABELS);
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Option(names = "--out", paramLabel = "FOLDER", defaultValue = "out", description = "Where the PDF files go (${DEFAULT-VALUE}).")
    private Path out = Path.of("out");
    @Option(names = "--only", paramLabel = "KIND,…", split = ",", description = "Only these documents: handout, key, safety, prep, labels.")
    private List<String> only = List.of();
    @Option(names = "--large", description = "The handout and the safety panel in large print (18 points and more) as well.")
    private boolean large;
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
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        List<InputFile> inputs = new Inputs(disk).find(files.isEmpty() ? List.of(usualInput(disk)) : files);
        checkNames(inputs);
        Table table = new Table();
        Map<Path, PdfPrinter> printers = new LinkedHashMap<>();
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
                table.row(input.name(), "nothing; what was there stays", count(found, Severity.ERROR), count(found, Severity.WARNING));
                continue;
            }
            List<Finding> warnings = found.findings().stream().filter(f -> f.severity() == Severity.WARNING).toList();
            Lot lot = new Lot("", found.value(), warnings, workshop.country(input, found.value()), kinds, workshop.dataVersion(input), "", large);
            List<Finding> seen = new ArrayList<>();
            Optional<String> written = print(lot, printers.computeIfAbsent(templates(input), f -> new PdfPrinter(Templates.over(f))), disk, err, seen);
            seen.forEach(f -> err.println(words.full(f)));
            errors |= written.isEmpty();
            table.row(input.name(), written.orElse("nothing; what was there stays"), written.isEmpty() ? 1 : 0, count(found, Severity.WARNING) + seen.size());
        }
        console.print(table.text(out.toString()));
        return errors ? Main.ERRORS : Main.CLEAN;
    }

    /** The folder {@code procedures} here; where there is none, the procedures that travel with the program. */
    private static Path usualInput(Disk disk) {
        return disk.isFolder(USUAL_INPUT) ? USUAL_INPUT : PackedProcedures.folder().orElse(USUAL_INPUT);
    }

    /** Every sheet is complete before the first file of the procedure is replaced. @param seen takes what only the laid-out pages show */
    private Optional<String> print(Lot lot, PdfPrinter printer, Disk disk, PrintWriter err, List<Finding> seen) {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        List<String> written = new ArrayList<>();
        try {
            for (LotDocument document : lot.print(printer)) {
                Printed printed = document.printed();
                printed.missing().forEach(c -> err.println("tarewright: " + lot.name() + ": no typeface of ours has the character "
                        + String.format(Locale.ROOT, "U+%04X", c) + "; it prints as #"));
                if (printed.spilled()) {
                    err.println("tarewright: " + lot.name() + ": a label holds more than its field, so those below it have moved; say fewer rows or columns in `labels`");
                }
                if (document.kind() == Sheet.Kind.HANDOUT && !document.large()) {
                    HandoutLong.of(lot.procedure(), printed.pages()).ifPresent(seen::add);
                }
                files.put(out.resolve(lot.folder()).resolve(document.file()), printed.pdf());
                written.add(document.kind().word() + (document.large() ? "-large" : "") + " (" + printed.pages() + ")");
            }
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                disk.replace(file.getKey(), file.getValue());
            }
            return Optional.of(String.join(", ", written));
        } catch (BrokenTemplate e) {
            err.println("tarewright: the template " + e.template() + e.line().map(l -> ", line " + l).orElse("") + ": " + e.says());
        } catch (IOException e) {
            err.println("tarewright: " + out + " cannot be written (" + e.getMessage() + "). Free some space or choose another folder with --out.");
        }
        return Optional.empty();
    }

    private Set<Sheet.Kind> kinds() {
        Set<Sheet.Kind> kinds = EnumSet.noneOf(Sheet.Kind.class);
        for (String word : only) {
            kinds.add(ALL.stream().filter(k -> k.word().equals(word.strip().toLowerCase(Locale.ROOT))).findFirst()
                    .orElseThrow(() -> new Inputs.Usage("--only takes handout, key, safety, prep, labels, not `" + word + "`")));
        }
        return kinds.isEmpty() ? EnumSet.copyOf(KINDS) : kinds;
    }

    /** A folder {@code templates} beside the procedure's folder goes before the packed templates. */
    private static Path templates(InputFile input) {
        Path folder = Optional.ofNullable(input.path().toAbsolutePath().normalize().getParent()).orElse(Path.of("."));
        Path beside = folder.resolveSibling("templates");
        Path inside = folder.resolve("templates");
        return Files.isDirectory(inside) ? inside : beside;
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
