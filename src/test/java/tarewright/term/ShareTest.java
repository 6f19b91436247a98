package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Shares of a print for several machines. The laws are those of a partition; no source is needed. */
class ShareTest {
    @Test
    void sharesAreDisjointCompleteAndEqualToOne() {
        for (int size = 0; size <= 40; size++) {
            List<Integer> all = IntStream.range(0, size).boxed().toList();
            for (int of = 1; of <= 17; of++) {
                List<Integer> together = new ArrayList<>();
                for (int part = 1; part <= of; part++) {
                    List<Integer> mine = new Share(part, of).from(all);
                    assertTrue(mine.size() == size / of || mine.size() == size / of + 1, part + "/" + of + " of " + size);
                    together.addAll(mine);
                }
                assertEquals(all, together.stream().sorted().toList());
            }
        }
    }

    @Test
    void whatIsNoShareIsNotTaken() {
        assertEquals(Optional.of(new Share(3, 16)), Share.read("3/16"));
        for (String wrong : List.of("0/4", "5/4", "3", "3/", "-1/2", "a/b", "1/99999999")) {
            assertEquals(Optional.empty(), Share.read(wrong), wrong);
        }
    }
}
