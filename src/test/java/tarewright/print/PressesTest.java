package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tarewright.document.Sheet;

/** Documents of one procedure are printed side by side; who gets them sees no difference. */
class PressesTest {
    private static Presses two() {
        return Presses.begun(() -> new PdfPrinter(Templates.packed()));
    }

    @Test
    void severalPrintersGiveTheDocumentsInTheirOrderAndTheSameBytesAsOne() {
        List<Sheet> sheets = IntStream.range(0, 6).mapToObj(seed -> new RandomSheets(seed).sheet()).toList();
        List<Printed> alone = Presses.of(new PdfPrinter(Templates.packed())).each(sheets, PdfPrinter::print);
        List<Printed> together = two().each(sheets, PdfPrinter::print);
        assertEquals(sheets.size(), together.size());
        for (int i = 0; i < sheets.size(); i++) {
            assertArrayEquals(alone.get(i).pdf(), together.get(i).pdf(), "document " + i);
        }
    }

    /** Whichever printer comes to its mistake first, the message is about the first document in order, so a print says the same each time. */
    @Test
    void ofSeveralMistakesTheFirstInOrderIsTold() {
        for (int time = 0; time < 5; time++) {
            IllegalStateException told = assertThrows(IllegalStateException.class, () -> two().each(List.of(0, 1, 2, 3), (printer, piece) -> {
                if (piece > 0) {
                    throw new IllegalStateException("piece " + piece);
                }
                return piece;
            }));
            assertEquals("piece 1", told.getMessage());
        }
    }

    /** A printer holds parsed typefaces and is for one thread only. */
    @Test
    void aPrinterIsNeverUsedByTwoThreadsAtOnce() {
        Set<PdfPrinter> busy = ConcurrentHashMap.newKeySet();
        List<PdfPrinter> used = two().each(new ArrayList<>(IntStream.range(0, 200).boxed().toList()), (printer, piece) -> {
            assertTrue(busy.add(printer), "busy already");
            Thread.yield();
            busy.remove(printer);
            return printer;
        });
        assertEquals(200, used.size());
        assertTrue(Set.copyOf(used).size() <= Math.max(1, Runtime.getRuntime().availableProcessors()));
    }
}
