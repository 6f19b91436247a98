package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The day of a class as a Spanish technician reads it (RAE, Ortografía de la lengua española, 2010: day, month in letters and small, year). */
class DatesTest {
    @ParameterizedTest
    @CsvSource({"2041-02-04, es, 4 de febrero de 2041", "2041-09-30, es-MX, 30 de septiembre de 2041", "2041-02-04, en, 2041-02-04", "2041-02-30, es, 2041-02-30",
        "some day, es, some day"})
    void aDayIsWrittenTheWayOfTheLanguage(String iso, String language, String printed) {
        assertEquals(printed, Dates.printed(iso, language));
    }
}
