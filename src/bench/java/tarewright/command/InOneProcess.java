package tarewright.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.finding.Found;
import tarewright.print.Format;
import tarewright.print.PdfPrinter;
import tarewright.print.Presses;
import tarewright.print.Templates;
import tarewright.print.Xhtml;
import tarewright.procedure.resolve.Resolved;
import tarewright.setting.Overrides;
import tarewright.term.Lot;
import tarewright.term.Printing;
import tarewright.term.Program;

/** What {@code src/bench/whole.sh} measures inside one warm process, and the pages that it gives to other programs. Each mode prints one line of figures. */
public final class InOneProcess {
    private static final List<Sheet.Kind> THREE = List.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY);
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    private InOneProcess() {
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[1]);
        switch (arguments[0]) {
            case "edit" -> edit(folder, Path.of(arguments[2]), arguments[3], Integer.parseInt(arguments[4]));
            case "term" -> term(folder, arguments[2], Integer.parseInt(arguments[3]));
            case "floor" -> floor(folder, Integer.parseInt(arguments[2]));
            case "xhtml" -> xhtml(folder, Path.of(arguments[2]));
            default -> throw new IllegalArgumentException(arguments[0]);
        }
    }

    /** Median and largest time from a changed procedure on the disk to its three new PDF files on the disk. @param amount of which the last digit changes */
    private static void edit(Path folder, Path procedure, String amount, int times) throws IOException {
        String text = Files.readString(procedure);
        if (!text.contains(amount)) {
            throw new IllegalArgumentException("no " + amount + " in " + procedure);
        }
        Path file = folder.resolve("procedures").resolve(procedure.getFileName());
        Files.createDirectories(file.getParent());
        Program program = Program.running();
        Printing printing = new Printing(folder.resolve("out"), program.build());
        Presses presses = Presses.begun(() -> new PdfPrinter(Templates.over(Workshop.templates(input(file)))));
        String digits = amount.split(" ")[0];
        double[] millis = new double[times];
        for (int i = 0; i < times; i++) {
            int last = digits.length() - 1;
            String other = digits.substring(0, last - 1) + String.format(Locale.ROOT, "%02d", 11 + i % 80);
            Files.writeString(file, text.replace(amount, amount.replace(digits, other)));
            long start = System.nanoTime();
            Workshop workshop = new Workshop(new Disk(), Overrides.NONE);
            Lot lot = workshop.lot(input(file), resolved(workshop, file), java.util.Set.copyOf(THREE), false, program);
            int printed = printing.print(lot, java.util.Set.of(Format.PDF), presses).printed().size();
            millis[i] = (System.nanoTime() - start) / 1e6;
            if (printed != THREE.size()) {
                throw new IllegalStateException(printed + " documents");
            }
        }
        double[] warm = Arrays.copyOfRange(millis, times / 2, times);
        Arrays.sort(warm);
        System.out.printf(Locale.ROOT, "first %.0f ms, warm median %.0f ms, largest %.0f ms%n", millis[0], warm[warm.length / 2], warm[warm.length - 1]);
    }

    /** Pages a second of a whole term, printed again and again into fresh folders by the command itself. */
    private static void term(Path folder, String term, int times) throws IOException {
        double[] rates = new double[times];
        long[] live = new long[times];
        int pages = 0;
        int documents = 0;
        for (int i = 0; i < times; i++) {
            Path out = folder.resolve("term");
            delete(out);
            StringWriter said = new StringWriter();
            PrintWriter to = new PrintWriter(said);
            long start = System.nanoTime();
            int status = Main.run(new String[] {"print", "--term", term, "--out", out.toString()}, to, to);
            double seconds = (System.nanoTime() - start) / 1e9;
            if (status != Main.CLEAN) {
                throw new IllegalStateException(said.toString());
            }
            List<Path> files = single(out);
            documents = files.size();
            pages = 0;
            for (Path file : files) {
                try (PDDocument document = Loader.loadPDF(file.toFile())) {
                    pages += document.getNumberOfPages();
                }
            }
            rates[i] = pages / seconds;
            live[i] = live();
            System.err.printf(Locale.ROOT, "term %d: %.1f pages/s, %d MB live after it%n", i + 1, rates[i], live[i]);
        }
        System.out.printf(Locale.ROOT, "%d documents, %d pages: first %.0f pages/s, last %.0f pages/s, live heap after the first %d MB, after the last %d MB%n",
                documents, pages, rates[0], rates[times - 1], live[0], live[times - 1]);
    }

    /** What is held when nothing is being printed, in megabytes: the same after the first term and the last, or something grows. */
    private static long live() {
        System.gc();
        Runtime memory = Runtime.getRuntime();
        return (memory.totalMemory() - memory.freeMemory()) >> 20;
    }

    /** The same number of documents, pages and words by PDFBox alone: lines of words, one face in each file, on as many threads. */
    private static void floor(Path folder, int times) throws Exception {
        List<List<List<String>>> documents = new ArrayList<>();
        int pages = 0;
        for (Path file : single(folder.resolve("term"))) {
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                List<List<String>> its = new ArrayList<>();
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    PDFTextStripper text = new PDFTextStripper();
                    text.setStartPage(page);
                    text.setEndPage(page);
                    its.add(text.getText(document).lines().toList());
                }
                pages += its.size();
                documents.add(its);
            }
        }
        byte[] face;
        try (InputStream in = InOneProcess.class.getResourceAsStream("/tarewright/fonts/DejaVuSans.ttf")) {
            face = in.readAllBytes();
        }
        double last = 0;
        ThreadLocal<TrueTypeFont> faces = ThreadLocal.withInitial(() -> parsed(face));
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            List<Future<Integer>> all = new ArrayList<>();
            documents.forEach(d -> all.add(threads.submit(() -> plain(d, faces.get()))));
            for (Future<Integer> each : all) {
                each.get();
            }
            last = pages / ((System.nanoTime() - start) / 1e9);
        }
        threads.shutdown();
        System.out.printf(Locale.ROOT, "%d documents, %d pages: last %.0f pages/s%n", documents.size(), pages, last);
    }

    private static TrueTypeFont parsed(byte[] face) {
        try {
            return new TTFParser().parse(new RandomAccessReadBuffer(face));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int plain(List<List<String>> pages, TrueTypeFont face) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDFont font = PDType0Font.load(document, face, true);
            for (List<String> lines : pages) {
                PDPage page = new PDPage(PDRectangle.A4);
                document.addPage(page);
                try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                    out.beginText();
                    out.setFont(font, 9);
                    out.setLeading(11);
                    out.newLineAtOffset(50, 800);
                    for (String line : lines) {
                        out.showText(line.codePoints().filter(c -> face(face, c)).collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString());
                        out.newLine();
                    }
                    out.endText();
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.size();
        }
    }

    private static boolean face(TrueTypeFont face, int character) {
        try {
            return face.getUnicodeCmapLookup().getGlyphId(character) != 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The pages that the three documents are laid out from, for another program to print. */
    private static void xhtml(Path folder, Path procedure) throws IOException {
        Workshop workshop = new Workshop(new Disk(), Overrides.NONE);
        Found<Resolved> found = resolved(workshop, procedure);
        Files.createDirectories(folder);
        List<Sheet> sheets = new Documents(workshop.country(input(procedure), found.value())).sheets(found.value(), java.util.Set.copyOf(THREE), List.of(), "bench", "");
        for (Sheet sheet : sheets) {
            Files.writeString(folder.resolve(sheet.kind().word() + ".xhtml"), new Xhtml(Templates.packed()).render(sheet));
        }
        System.out.println(sheets.size() + " pages of XHTML");
    }

    private static Found<Resolved> resolved(Workshop workshop, Path file) {
        Found<Resolved> found = workshop.resolve(input(file));
        if (found.hasErrors()) {
            throw new IllegalStateException(file + ": " + found.findings());
        }
        return found;
    }

    private static InputFile input(Path file) {
        return new InputFile(file, file.toString());
    }

    /** Files of one document; a packet is made of them. */
    private static List<Path> single(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(f -> f.toString().endsWith(".pdf") && !f.getFileName().toString().contains("packet")).sorted().toList();
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
