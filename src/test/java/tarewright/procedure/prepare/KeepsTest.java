package tarewright.procedure.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a solution keeps, out of the author's words. What is not one clear time shares nothing. Months and years are counted short, on the safe side. */
class KeepsTest {
    @ParameterizedTest
    @CsvSource({"one year, 360", "two weeks in the dark, 14", "a day, 1", "at most 3 months, 84", "10 days, 10", "an hour, 0", "dos semanas, 14", "un año, 360", "6 meses, 168"})
    void aClearTimeIsRead(String words, int days) {
        assertEquals(OptionalInt.of(days), Keeps.days(words));
    }

    @ParameterizedTest
    @CsvSource({"make it fresh", "a few days", "2 to 3 weeks", "two to three weeks", "a week or two", "one day open and one year closed", "some months", "0 days", "1.5 years", "'a week, then 2 days'"})
    void whatIsNoneIsNotGuessed(String words) {
        assertEquals(OptionalInt.empty(), Keeps.days(words));
    }
}
