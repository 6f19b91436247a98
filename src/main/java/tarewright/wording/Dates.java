package tarewright.wording;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;

/** A day as people write it in a language. */
public final class Dates {
    private static final String[] MONTHS = {"enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre",
        "noviembre", "diciembre"};

    private Dates() {
    }

    /**
     * {@code 4 de febrero de 2041} in Spanish; in English as ISO 8601 has it, since a day and a month in figures are read both ways round there.
     *
     * @param iso {@code 2041-02-04}; what is no such date stays as it is
     * @param language BCP 47
     */
    public static String printed(String iso, String language) {
        if (!language.toLowerCase(Locale.ROOT).split("-", 2)[0].equals("es")) {
            return iso;
        }
        try {
            LocalDate date = LocalDate.parse(iso);
            return date.getDayOfMonth() + " de " + MONTHS[date.getMonthValue() - 1] + " de " + date.getYear();
        } catch (DateTimeException e) {
            return iso;
        }
    }
}
