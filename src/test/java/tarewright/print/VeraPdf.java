package tarewright.print;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.TreeMap;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The open reference validator for PDF/A and PDF/UA (veraPDF), as one call. */
public final class VeraPdf {
    private VeraPdf() {
    }

    /** What was checked, and each failed check: clause, test number, message, place. */
    public record Outcome(int checks, List<String> failures) {
    }

    public static Outcome check(byte[] pdf, PDFAFlavour flavour) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, true)) {
            ValidationResult result = validator.validate(parser);
            List<String> failures = result.getTestAssertions().stream().filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                    .map(VeraPdf::words).distinct().toList();
            if (failures.isEmpty() && !result.isCompliant()) {
                failures = List.of("not compliant, and no failure named: " + new TreeMap<>(result.getFailedChecks()));
            }
            return new Outcome(result.getTotalAssertions(), failures);
        }
    }

    private static String words(TestAssertion a) {
        return a.getRuleId().getClause() + "-" + a.getRuleId().getTestNumber() + " " + a.getMessage() + " at "
                + a.getLocation().getContext();
    }
}
