package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import tarewright.print.PdfPrinter;
import tarewright.print.Templates;
import tarewright.procedure.check.Rehearsal;
import tarewright.procedure.declare.Term;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Version;
import tarewright.term.Lot;
import tarewright.term.Program;
import tarewright.wording.FindingText;

/** {@code proof}: reads, resolves and checks, prints nothing. */
@Command(name = "proof", sortOptions = false, description = "Checks procedures without printing them.")
final class ProofCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Option(names = "--term", paramLabel = "FILE", description = "A term: each procedure in the room and with the groups of each of its sections.")
    private Optional<Path> term = Optional.empty();
    @Mixin
    private SettingOptions setting = new SettingOptions();
    @Option(names = "--short", description = "One line for each finding.")
    private boolean brief;
    @Option(names = "--json", description = "The findings as JSON, one object for each file.")
    private boolean json;
    @Option(names = "--rehearse", description = "Also does each procedure with an invented class, every group with errors of its own.")
    private boolean rehearse;
    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Another number invents another class (${DEFAULT-VALUE}).")
    private long seed = 1;
    @Option(names = "--pages", description = "Also lays the handout out, and tells if it needs more than two sides.")
    private boolean pages;
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        FindingText words = FindingText.in("en");
        Disk disk = new Disk();
        if (term.isPresent() != files.isEmpty()) {
            throw new Inputs.Usage("say which procedures, or which term with --term FILE");
        }
        List<Finding> all = new ArrayList<>();
        if (term.isPresent()) {
            term(TermWork.of(term.get(), setting.overrides(words), disk), words, out, all);
        }
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        for (InputFile file : files.isEmpty() ? List.<InputFile>of() : new Inputs(disk).find(files)) {
            Found<Resolved> found = pages ? laidOut(workshop, file) : workshop.resolve(file);
            all.addAll(found.findings());
            if (json) {
                out.println(JsonLine.of(FindingsJson.of(file, found.findings(), words)));
            } else {
                found.findings().forEach(f -> out.println(brief ? words.line(f) : words.full(f)));
                if (rehearse && !found.hasErrors()) {
                    for (Version version : found.value().eachVersion()) {
                        rehearse(version, out);
                    }
                }
            }
        }
        if (!json) {
            out.println(all.isEmpty() ? "clean" : words.count(all));
        }
        return all.stream().anyMatch(f -> f.severity() == Severity.ERROR) ? Main.ERRORS : Main.CLEAN;
    }

    private void rehearse(Version version, PrintWriter out) {
        for (Hand hand : version.resolved().hands()) {
            String name = version.resolved().name() + (version.letter().isEmpty() ? "" : ", version " + version.letter())
                    + (hand.label().isEmpty() ? "" : ", groups " + hand.groups());
            out.print(RehearsalText.of(name, Rehearsal.of(hand.resolved(), hand.times(), seed)));
        }
    }

    /** Each finding stands under the section whose class or room it is of. */
    private void term(TermWork work, FindingText words, PrintWriter out, List<Finding> all) throws IOException {
        all.addAll(work.findings());
        work.findings().forEach(f -> out.println(brief ? words.line(f) : words.full(f)));
        for (Term.Section section : work.sections(List.of())) {
            List<Finding> its = new ArrayList<>();
            List<TermWork.Each> each = work.work(section, its);
            each.forEach(e -> its.addAll(e.found().findings()));
            all.addAll(its);
            if (json) {
                for (TermWork.Each e : each) {
                    Map<String, Object> node = FindingsJson.of(e.input(), e.found().findings(), words);
                    node.put("section", section.name());
                    out.println(JsonLine.of(node));
                }
            } else if (!its.isEmpty()) {
                out.println("Section " + section.name() + ":");
                its.forEach(f -> out.println(brief ? words.line(f) : words.full(f)));
            }
        }
    }

    /** With what only the laid-out page shows. Not by default: laying out takes longer than all the checks. */
    private static Found<Resolved> laidOut(Workshop workshop, InputFile file) {
        Found<Resolved> found = workshop.resolve(file);
        if (found.hasErrors()) {
            return found;
        }
        Lot lot = workshop.lot(file, found, Set.of(Sheet.Kind.HANDOUT), false, Program.running());
        int sides = lot.print(new PdfPrinter(Templates.packed())).stream().mapToInt(d -> d.printed().pages()).max().orElse(0);
        List<Finding> all = new ArrayList<>(found.findings());
        HandoutLong.of(found.value(), sides).ifPresent(all::add);
        return new Found<>(found.value(), all);
    }
}
