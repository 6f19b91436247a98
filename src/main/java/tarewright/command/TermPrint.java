package tarewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
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
import tarewright.print.PacketPdf;
import tarewright.print.PdfPrinter;
import tarewright.print.Templates;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.declare.Term;
import tarewright.procedure.prepare.Need;
import tarewright.setting.Setting;
import tarewright.term.FileSets;
import tarewright.term.Hash;
import tarewright.term.Lot;
import tarewright.term.LotDocument;
import tarewright.term.OrderList;
import tarewright.term.Printing;
import tarewright.term.Program;
import tarewright.wording.FindingText;

/** Prints the sections of a term, each into a folder of its own, several at a time: a section with a mistake prints nothing of it, and the others print all the same. */
final class TermPrint {
    private static final String STAYS = "nothing; what was there stays";
    private static final List<Sheet.Kind> COPYING_ORDER = List.of(Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS, Sheet.Kind.HANDOUT);

    private final TermWork work;
    private final Set<Sheet.Kind> kinds;
    private final Set<Format> formats;
    private final boolean large;
    private final Path out;
    private final FindingText words;
    private final Program program = Program.running();
    private final Printing printing;
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
        Path templates = Workshop.templates(new InputFile(work.file(), work.file().toString()));
        this.printer = ThreadLocal.withInitial(() -> new PdfPrinter(Templates.over(templates)));
    }

    /** A line of the table. */
    private record Row(String name, String written, int errors, int warnings) {
    }

    /** How often a document is copied. @param pages of one copy */
    private record Copying(String document, int pages, int copies) {
    }

    /** What became of a section. */
    private record Done(Term.Section section, List<Row> rows, List<Copying> copying, List<Need> needs, String told, boolean errors) {
    }

    /** @param whole whether these are all sections, so that what the term needs is known */
    int print(List<Term.Section> sections, boolean whole, PrintWriter console, PrintWriter err) {
        boolean errors = TermWork.hasErrors(work.findings());
        List<Need> needs = new ArrayList<>();
        Table table = new Table();
        CopyTable copies = new CopyTable();
        ExecutorService threads = Executors.newFixedThreadPool(Math.max(1, Math.min(Runtime.getRuntime().availableProcessors(), sections.size())));
        try {
            List<Future<Done>> all = new ArrayList<>();
            sections.forEach(section -> all.add(threads.submit(() -> section(section))));
            for (Future<Done> each : all) {
                Done done = each.get();
                err.print(done.told());
                err.flush();
                errors |= done.errors();
                needs.addAll(done.needs());
                done.rows().forEach(r -> table.row(r.name(), r.written(), r.errors(), r.warnings()));
                done.copying().forEach(c -> copies.row(done.section().name(), c.document(), c.pages(), c.copies()));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Main.ERRORS;
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            threads.shutdownNow();
        }
        if (whole && !errors && kinds.contains(Sheet.Kind.PREP) && !needs.isEmpty()) {
            errors |= !order(needs, table, err);
        }
        console.print(table.text(out.toString()));
        console.print(copies.text());
        return errors ? Main.ERRORS : Main.CLEAN;
    }

    /** What the whole term needs, less what is on the shelf; only where every section is known. */
    private boolean order(List<Need> needs, Table table, PrintWriter err) {
        String name = new InputFile(work.file(), "").name();
        String version = Hash.of(program.build() + work.stocks().stream().map(s -> s.block().span().text()).toList() + needs.stream().map(n -> n.section()
                + n.procedure().name() + n.procedure().setting() + n.procedure().procedure().source().text().content()).toList()).substring(0, 7);
        try {
            LotDocument document = new OrderList(name, needs, version, work.school()).print(printer.get());
            byte[] pdf = document.printed().pdf();
            Path place = out.resolve(document.file());
            boolean same = Files.isRegularFile(place) && Arrays.equals(Files.readAllBytes(place), pdf);
            if (!same) {
                new FileSets(out).replace(name + "-order", Map.of(document.file(), pdf), Set.of());
            }
            table.row(name, (same ? "unchanged: " : "") + "order (" + document.printed().pages() + ")", 0, 0);
            return true;
        } catch (IOException e) {
            err.println("tarewright: the order list cannot be written (" + e.getMessage() + ").");
            return false;
        }
    }

    private Done section(Term.Section section) {
        StringWriter told = new StringWriter();
        PrintWriter err = new PrintWriter(told);
        List<Finding> its = new ArrayList<>();
        List<TermWork.Each> all = work.work(section, its);
        its.forEach(f -> err.println(words.full(f)));
        List<Row> rows = new ArrayList<>();
        if (section.bad() || TermWork.hasErrors(its)) {
            rows.add(new Row(section.name(), STAYS, (int) Math.max(1, its.stream().filter(f -> f.severity() == Severity.ERROR).count()), 0));
            return new Done(section, rows, List.of(), List.of(), told.toString(), true);
        }
        boolean errors = false;
        List<Need> needs = new ArrayList<>();
        Map<String, Integer> order = new LinkedHashMap<>();
        String folder = TermWork.folder(section);
        for (TermWork.Each each : all) {
            each.found().findings().forEach(f -> err.println("Section " + section.name() + ":\n" + words.full(f)));
            String name = folder + "/" + each.input().name();
            int warnings = (int) each.found().findings().stream().filter(f -> f.severity() == Severity.WARNING).count();
            if (each.found().hasErrors()) {
                errors = true;
                rows.add(new Row(name, STAYS, (int) each.found().findings().stream().filter(f -> f.severity() == Severity.ERROR).count(), warnings));
                continue;
            }
            try {
                Lot lot = work.lot(each, kinds, large, program);
                Printing.Outcome outcome = printing.print(lot, formats, printer.get());
                outcome.printed().forEach(d -> Remarks.tell(lot, d, err));
                rows.add(new Row(name, Remarks.written(outcome), 0, warnings));
                needs.add(new Need(section.name(), each.found().value(), work.stocks(), lot.country().rules()));
                Setting setting = each.found().value().setting();
                COPYING_ORDER.stream().filter(kinds::contains).forEach(k -> lot.files(k, Format.PDF).forEach(f -> order.put(f, copies(section, k, setting, each.found().value()))));
            } catch (BrokenTemplate e) {
                errors = true;
                err.println("tarewright: the template " + e.template() + e.line().map(l -> ", line " + l).orElse("") + ": " + e.says());
                rows.add(new Row(name, STAYS, 1, warnings));
            } catch (IOException e) {
                errors = true;
                err.println(CannotWrite.says(out.resolve(folder), e));
                rows.add(new Row(name, STAYS, 1, warnings));
            }
        }
        List<Copying> copying = errors ? List.of() : packet(section, folder, order, err);
        return new Done(section, rows, copying, needs, told.toString(), errors || copying.isEmpty() && !order.isEmpty());
    }

    /** Where amounts are dealt, a handout file holds a handout for each of them and serves as many groups; versions of the questions' numbers go round in turn. */
    private int copies(Term.Section section, Sheet.Kind kind, Setting setting, Resolved procedure) {
        if (kind != Sheet.Kind.HANDOUT) {
            return 1;
        }
        int hands = procedure.hands().size();
        int versions = procedure.eachVersion().size();
        int rounds = (setting.groups() + hands - 1) / hands;
        return switch (work.copies(section)) {
            case EACH_GROUP -> (rounds + versions - 1) / versions;
            case EACH_STUDENT -> (rounds * setting.groupSize() + versions - 1) / versions;
            case ONE -> 1;
        };
    }

    /** One at a time: a packet is by far the largest thing that a print holds. */
    private synchronized byte[] joined(Term.Section section, List<PacketPdf.Part> parts) {
        return PacketPdf.of(section.name(), parts, true);
    }

    /** The section's documents in one file, in copying order: what the teacher and the technician need first, then a handout for each. Nothing where it cannot be written. */
    private List<Copying> packet(Term.Section section, String folder, Map<String, Integer> order, PrintWriter err) {
        List<PacketPdf.Part> parts = new ArrayList<>();
        List<Copying> copying = new ArrayList<>();
        try {
            for (Map.Entry<String, Integer> each : order.entrySet()) {
                byte[] pdf = Files.readAllBytes(out.resolve(folder).resolve(each.getKey()));
                String name = each.getKey().substring(0, each.getKey().length() - 4);
                parts.add(new PacketPdf.Part(name, pdf, each.getValue()));
                copying.add(new Copying(name, PacketPdf.pages(pdf), each.getValue()));
            }
            String file = folder + "-packet.pdf";
            byte[] packet = joined(section, parts);
            Path place = out.resolve(folder).resolve(file);
            if (!Files.isRegularFile(place) || !Arrays.equals(Files.readAllBytes(place), packet)) {
                new FileSets(out.resolve(folder)).replace(folder + "-packet", Map.of(file, packet), Set.of());
            }
            return copying;
        } catch (IOException e) {
            err.println("tarewright: the packet of `" + section.name() + "` cannot be written (" + e.getMessage() + ").");
            return List.of();
        }
    }
}
