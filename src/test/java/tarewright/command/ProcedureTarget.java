package tarewright.command;

import java.nio.file.Path;
import tarewright.finding.Finding;
import tarewright.fuzz.Held;
import tarewright.setting.Overrides;
import tarewright.wording.FindingText;

/** Any bytes as a procedure, the whole way that `proof` takes: read, resolved, checked, put into words. */
public final class ProcedureTarget {
    private static final FindingText WORDS = FindingText.in("en");
    private static final OneFile FED = new OneFile();
    private static final Workshop WORKSHOP = new Workshop(FED, Overrides.NONE);

    private ProcedureTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        FED.holds(bytes);
        Held.soon(() -> {
            for (Finding finding : WORKSHOP.resolve(new InputFile(Path.of("fuzz.md"), "fuzz.md")).findings()) {
                if (finding.at().line() < 1 || finding.at().column() < 1 || WORDS.full(finding).isBlank()) {
                    throw new AssertionError(finding.id());
                }
            }
        });
    }
}
