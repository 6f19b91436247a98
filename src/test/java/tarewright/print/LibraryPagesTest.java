package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.document.Documents;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.library.Library;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables;
import tarewright.wording.DocumentWords;

/** How the pages of the procedures that we ship break: read out of the printed files. What is asked is common practice, no source. */
class LibraryPagesTest {
    private static final PdfPrinter PRINTER = new PdfPrinter(Templates.packed());
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));

    /** How many different handouts there are: one for each amount that is dealt. */
    private static int hands(Path file, int groups) {
        return Library.resolve(file, Library.setting(groups, "20 °C", "101.3 kPa")).value().hands().size();
    }

    private static List<Sheet> sheets(Path file, int groups, Sheet.Paper paper, Set<Sheet.Kind> kinds) {
        // Where amounts are dealt out, each deal has a leaf of its own; they differ in an amount and break alike.
        Resolved procedure = Library.resolve(file, Library.setting(groups, "20 °C", "101.3 kPa")).value().hands().get(0).resolved();
        return Documents.withLarge(DOCUMENTS.sheets(procedure, kinds, List.of(), "abcdefg", "").stream().map(s -> new Sheet(s.kind(),
                s.title(), s.kindName(), s.code(), s.version(), s.language(), paper, s.footer(), s.pageWord(), s.pieces())).toList());
    }

    /** One document for one class on one paper. */
    private record Printing(Path file, int groups, Sheet.Paper paper, Set<Sheet.Kind> kinds, boolean large) {
        @Override
        public String toString() {
            return file.getFileName() + ", " + groups + " groups, " + paper + ": " + kinds + (large ? " and large print" : "");
        }
    }

    /** In verify what changes most with the class; every document of every class with {@code -Dpages=all}. */
    static Stream<Printing> printings() {
        if ("all".equals(System.getProperty("pages"))) {
            return Library.files().stream().flatMap(f -> Stream.of(1, 7, 30).flatMap(g -> Stream.of(Sheet.Paper.values())
                    .map(p -> new Printing(f, g, p, EnumSet.allOf(Sheet.Kind.class), true))));
        }
        return Library.files().stream().flatMap(f -> Stream.of(
                new Printing(f, 1, Sheet.Paper.A4, EnumSet.of(Sheet.Kind.HANDOUT), false),
                new Printing(f, 7, Sheet.Paper.LETTER, EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS), true),
                new Printing(f, 30, Sheet.Paper.A4, EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY), false)));
    }

    @ParameterizedTest
    @MethodSource("printings")
    @DisplayName("a handout is one leaf, its double in the key breaks as it does; no step, row or ruled question is split, no heading parted "
            + "from what it heads: 1, 7 and 30 groups, both papers, large print")
    void pagesBreakWell(Printing printing) {
        List<String> torn = new ArrayList<>();
        Optional<Printed> handout = Optional.empty();
        Optional<Sheet> leaf = Optional.empty();
        int hands = hands(printing.file(), printing.groups());
        for (Sheet sheet : sheets(printing.file(), printing.groups(), printing.paper(), printing.kinds())) {
            boolean large = sheet.size() == Sheet.Size.LARGE;
            if (large && !printing.large()) {
                continue;
            }
            Printed printed = PRINTER.print(sheet);
            int looked = look(sheet, printed, (large ? "large " : "") + sheet.kind().word(), torn);
            assertTrue(looked >= leastLooked(sheet.kind()), sheet.kind() + ", looked at: " + looked);
            if (sheet.kind() == Sheet.Kind.HANDOUT && !large) {
                assertTrue(printed.pages() <= 2 * hands, printed.pages() + " pages for " + hands);
                handout = Optional.of(printed);
                leaf = Optional.of(sheet);
            } else if (sheet.kind() == Sheet.Kind.KEY && hands == 1) {
                isDouble(leaf.orElseThrow(), handout.orElseThrow(), printed);
            }
        }
        assertEquals(List.of(), torn);
    }

    /** A label sheet has no steps or rows, a key to supplied readings hardly any; everything else has. */
    private static int leastLooked(Sheet.Kind kind) {
        return kind == Sheet.Kind.LABELS ? 0 : kind == Sheet.Kind.HANDOUT ? 20 : kind == Sheet.Kind.MISSED_KEY ? 1 : 5;
    }

    /** The double begins on a page of its own behind the overview and ends before the answers; what is on a page of the one is on that of the other. */
    private static void isDouble(Sheet sheet, Printed handout, Printed printedKey) {
        int pages = handout.pages();
        List<String> key = Pdf.pages(printedKey);
        DocumentWords words = DocumentWords.in(sheet.language());
        int before = Pdf.pageOf(key.stream().map(p -> p.replace('\n', ' ')).toList(), words.say("leaf.filled-in")) - 1;
        assertTrue(before >= 1, "no overview before the double");
        assertTrue(key.size() > before + pages, "no answers behind the double");
        assertTrue(key.get(before + pages).startsWith(words.say("heading.answers")), key.get(before + pages));
        Whereabouts where = new Whereabouts(sheet, handout);
        List<String> twin = new Whereabouts(sheet, printedKey).pages().subList(before, before + pages);
        int compared = 0;
        for (Piece piece : sheet.pieces()) {
            List<List<Piece>> parts = piece instanceof Piece.Question q ? List.of(q.asked())
                    : piece instanceof Piece.Together ? List.of() : Whereabouts.inside(piece);
            for (List<Piece> part : parts) {
                compared += compared(part, where, twin);
            }
        }
        assertTrue(compared >= 10, "compared: " + compared);
    }

    /** @return 1 if the part was found on one page of the handout, and then it stands on that page of the double */
    private static int compared(List<Piece> part, Whereabouts handout, List<String> twin) {
        Set<Integer> pages = handout.of(part);
        if (pages.isEmpty()) {
            return 0;
        }
        assertEquals(1, pages.size(), part.toString());
        int page = pages.iterator().next();
        for (String run : handout.runs(part)) {
            assertTrue(twin.get(page - 1).contains(run), "not on page " + page + " of the double: " + run);
        }
        return 1;
    }

    private static int look(Sheet sheet, Printed printed, String where, List<String> torn) {
        assertEquals(List.of(), printed.remarks());
        emptyPages(sheet, printed).forEach(page -> torn.add(where + ": nothing on page " + page));
        return look(sheet.pieces(), new Whereabouts(sheet, printed), sheet.kind() != Sheet.Kind.KEY && sheet.kind() != Sheet.Kind.MISSED_KEY, where, torn);
    }

    /** The pages with nothing but their footer on them. */
    private static List<Integer> emptyPages(Sheet sheet, Printed printed) {
        List<String> pages = Pdf.pages(printed);
        return IntStream.range(0, pages.size()).filter(i -> pages.get(i).lines().allMatch(line -> line.isBlank() || line.contains(sheet.version())
                || line.contains(sheet.pageWord().page() + " " + (i + 1) + " "))).map(i -> i + 1).boxed().toList();
    }

    private static int look(List<Piece> pieces, Whereabouts at, boolean leaf, String where, List<String> torn) {
        int looked = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (piece instanceof Piece.Heading && i + 1 < pieces.size()) {
                looked++;
                OptionalInt head = at.first(piece);
                OptionalInt next = at.first(pieces.get(i + 1));
                if (head.isPresent() && next.isPresent() && head.getAsInt() != next.getAsInt()) {
                    torn.add(where + ": heading " + piece);
                }
            }
            List<List<Piece>> whole = new ArrayList<>();
            if (piece instanceof Piece.Steps steps) {
                whole.addAll(steps.steps());
            } else if (piece instanceof Piece.Question && leaf || piece instanceof Piece.Caution || piece instanceof Piece.Hazard) {
                whole.add(List.of(piece));
            }
            looked += whole.size();
            whole.stream().filter(w -> at.of(w).size() > 1).forEach(w -> torn.add(where + ": " + at.stand(w)));
            if (piece instanceof Piece.Table table) {
                looked += table.rows().size();
                table.rows().stream().filter(row -> row.stream().flatMap(cell -> at.ofText(cell).stream()).distinct().count() > 1)
                        .forEach(row -> torn.add(where + ": row " + row));
            }
            for (List<Piece> inside : Whereabouts.inside(piece)) {
                looked += look(inside, at, leaf || piece instanceof Piece.Leaf, where, torn);
            }
        }
        return looked;
    }
}
