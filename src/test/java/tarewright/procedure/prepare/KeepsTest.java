package tarewright.procedure.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Period;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a solution keeps, out of the author's words. What is not one clear time shares nothing. Months and years are those of the calendar. */
class KeepsTest {
    @ParameterizedTest
    @CsvSource({"one year, P1Y", "two weeks in the dark, P14D", "a day, P1D", "at most 3 months, P3M", "10 days, P10D", "an hour, P0D", "dos semanas, P14D", "un año, P1Y", "6 meses, P6M"})
    void aClearTimeIsRead(String words, Period time) {
        assertEquals(Optional.of(time), Keeps.of(words));
    }

    @ParameterizedTest
    @CsvSource({"make it fresh", "a few days", "2 to 3 weeks", "two to three weeks", "a week or two", "one day open and one year closed", "some months", "0 days", "1.5 years", "'a week, then 2 days'"})
    void whatIsNoneIsNotGuessed(String words) {
        assertEquals(Optional.empty(), Keeps.of(words));
    }
}
