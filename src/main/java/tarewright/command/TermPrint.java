package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.print.BrokenTemplate;
import tarewright.print.Format;
import tarewright.print.PdfPrinter;
import tarewright.print.Templates;
import tarewright.procedure.declare.Term;
import tarewright.procedure.prepare.Need;
import tarewright.term.CopyTable;
import tarewright.term.Copying;
import tarewright.term.Lot;
import tarewright.term.LotDocument;
import tarewright.term.Printing;
import tarewright.term.Program;
import tarewright.term.Sections;
import tarewright.term.TermFiles;
import tarewright.term.TermLot;
import tarewright.wording.FindingText;

/**
 * Prints the sections of a term, each into a folder of its own, several at a time: a section with a mistake prints nothing of it, and the others print
 * all the same.
 */
final class TermPrint {
    private static final String STAYS = "nothing; what was there stays";

    private final TermWork work;
    private final Set<Sheet.Kind> kinds;
    private final Set<Format> formats;
    private final boolean large;
    private final Path out;
    private final FindingText words;
    private final Program program = Program.running();
    private final Printing printing;
    private final TermFiles files;
    /** One for each thread: it holds parsed typefaces, which are dear, and is not shared. */
    private final ThreadLocal<PdfPrinter> printer;

    /** @param formats beside PDF, which the packet is made of */
    TermPrint(TermWork work, Set<Sheet.Kind> kinds, Set<Format> formats, boolean large, Path out, FindingText words) {
        this.work = work;
        this.kinds = kinds;
        this.formats = EnumSet.of(Format.PDF);
        this.formats.addAll(formats);
        this.large = large;
        this.out = out;
        this.words = words;
        this.printing = new Printing(out, program.build());
        this.files = new TermFiles(out);
        Path templates = Workshop.templates(new InputFile(work.file(), work.file().toString()));
        this.printer = ThreadLocal.withInitial(() -> new PdfPrinter(Templates.over(templates)));
    }

    /** A line of the table. */
    private record Row(String name, String written, int errors, int warnings) {
    }

    /** What became of a section. */
    private record Done(List<Row> rows, List<Copying> copying, List<Need> needs, String told, boolean errors) {
    }

    /** @param whole whether these are all sections, so that what the term needs is known */
    int print(List<Term.Section> sections, boolean whole, PrintWriter console, PrintWriter err) {
        boolean errors = TermWork.hasErrors(work.findings());
        List<Need> needs = new ArrayList<>();
        List<Copying> copies = new ArrayList<>();
        Table table = new Table();
        ExecutorService threads = Executors.newFixedThreadPool(Math.max(1, Math.min(Runtime.getRuntime().availableProcessors(), sections.size())));
        try {
            Map<Term.Section, Future<Done>> all = new LinkedHashMap<>();
            sections.forEach(section -> all.put(section, threads.submit(() -> section(section))));
            for (Map.Entry<Term.Section, Future<Done>> each : all.entrySet()) {
                Done done = done(each.getKey(), each.getValue());
                err.print(done.told());
                err.flush();
                errors |= done.errors();
                needs.addAll(done.needs());
                copies.addAll(done.copying());
                done.rows().forEach(r -> table.row(r.name(), r.written(), r.errors(), r.warnings()));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Main.ERRORS;
        } finally {
            threads.shutdownNow();
        }
        CopyTable copyTable = new CopyTable(copies);
        if (whole && !errors) {
            errors = !ofTheWhole(needs, copyTable, table, err);
        }
        console.print(table.text(out.toString()));
        console.print(copyTable.text());
        return errors ? Main.ERRORS : Main.CLEAN;
    }

    /** A mistake of ours in one section ends that section, and no other. */
    private static Done done(Term.Section section, Future<Done> its) throws InterruptedException {
        try {
            return its.get();
        } catch (ExecutionException e) {
            String said = "tarewright: section " + section.name() + ": " + Remarks.ourMistake(e.getCause(), "Its sheets that it did not come to stay as they were.")
                    + System.lineSeparator();
            return new Done(List.of(new Row(section.name(), STAYS, 1, 0)), List.of(), List.of(), said, true);
        }
    }

    /** What the whole term needs and copies; only where every section is known. */
    private boolean ofTheWhole(List<Need> needs, CopyTable copies, Table table, PrintWriter err) {
        String name = new InputFile(work.file(), "").name();
        try {
            if (kinds.contains(Sheet.Kind.PREP) && !needs.isEmpty()) {
                TermLot lot = work.whole(needs, program);
                List<LotDocument> documents = lot.print(printer.get());
                boolean written = files.put(lot, documents, program.build());
                documents.forEach(d -> table.row(name, (written ? "" : "unchanged: ") + d.kind().word() + " (" + d.printed().pages() + ")", 0, 0));
            }
            if (!copies.rows().isEmpty()) {
                files.put(name + "-copies.csv", copies.csv().getBytes(StandardCharsets.UTF_8));
            }
            return true;
        } catch (BrokenTemplate e) {
            err.println("tarewright: " + Remarks.broken(e));
        } catch (IOException e) {
            err.println(CannotWrite.says(out, e));
        }
        return false;
    }

    private Done section(Term.Section section) {
        StringWriter told = new StringWriter();
        PrintWriter err = new PrintWriter(told);
        List<Finding> its = new ArrayList<>();
        List<TermWork.Each> all = work.work(section, its);
        its.forEach(f -> err.println(words.full(f)));
        if (section.bad() || TermWork.hasErrors(its)) {
            Row row = new Row(section.name(), STAYS, Math.max(1, count(its, Severity.ERROR)), 0);
            return new Done(List.of(row), List.of(), List.of(), told.toString(), true);
        }
        List<Row> rows = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        Map<String, Integer> order = new LinkedHashMap<>();
        for (TermWork.Each each : all) {
            rows.add(procedure(each, needs, order, err));
        }
        boolean errors = rows.stream().anyMatch(r -> r.errors() > 0);
        List<Copying> copying = errors ? List.of() : packet(section, order, err);
        return new Done(rows, copying, needs, told.toString(), errors || copying.isEmpty() && !order.isEmpty());
    }

    /** @param needs takes what it needs @param order takes how often each of its files is copied */
    private Row procedure(TermWork.Each each, List<Need> needs, Map<String, Integer> order, PrintWriter err) {
        each.found().findings().forEach(f -> err.println("Section " + each.section().name() + ":\n" + words.full(f)));
        String name = Sections.folder(each.section()) + "/" + each.input().name();
        int warnings = count(each.found().findings(), Severity.WARNING);
        if (each.found().hasErrors()) {
            return new Row(name, STAYS, count(each.found().findings(), Severity.ERROR), warnings);
        }
        try {
            Lot lot = work.lot(each, kinds, large, program);
            Printing.Outcome outcome = printing.print(lot, formats, printer.get());
            outcome.printed().forEach(d -> Remarks.tell(lot, d, err));
            needs.add(work.need(each));
            order.putAll(work.sections().copies(each.section(), lot, kinds));
            return new Row(name, Remarks.written(outcome), 0, warnings);
        } catch (BrokenTemplate e) {
            err.println("tarewright: " + Remarks.broken(e));
        } catch (IOException e) {
            err.println(CannotWrite.says(out.resolve(Sections.folder(each.section())), e));
        }
        return new Row(name, STAYS, 1, warnings);
    }

    private static int count(List<Finding> findings, Severity severity) {
        return (int) findings.stream().filter(f -> f.severity() == severity).count();
    }

    /**
     * The section's documents in one file, in copying order: what the teacher and the technician need first, then a handout for each. Nothing where it
     * cannot be written.
     */
    private List<Copying> packet(Term.Section section, Map<String, Integer> order, PrintWriter err) {
        try {
            return files.packet(section.name(), Sections.folder(section), order);
        } catch (IOException e) {
            err.println(CannotWrite.says(out.resolve(Sections.folder(section)), e));
            return List.of();
        }
    }
}
