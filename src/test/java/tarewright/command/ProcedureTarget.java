package tarewright.command;

import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import tarewright.finding.Finding;
import tarewright.fuzz.Held;
import tarewright.setting.Overrides;
import tarewright.text.Outside;
import tarewright.wording.FindingText;

/** Any bytes as a procedure, the whole way that `proof` takes: read, resolved, checked, put into words. */
public final class ProcedureTarget {
    private static final FindingText WORDS = FindingText.in("en");
    private static final Fed FED = new Fed();
    private static final Workshop WORKSHOP = new Workshop(FED, Overrides.NONE);

    /** A folder with one file. */
    private static final class Fed implements Outside {
        private byte[] content = {};

        @Override
        public byte[] read(Path file, long most) {
            return content.clone();
        }

        @Override
        public List<Path> list(Path folder) {
            return List.of();
        }

        @Override
        public boolean isFolder(Path path) {
            return false;
        }

        @Override
        public boolean isFile(Path path) {
            return false;
        }

        @Override
        public Path real(Path path) throws NoSuchFileException {
            throw new NoSuchFileException(path.toString());
        }

        @Override
        public void replace(Path file, byte[] content) {
            throw new AssertionError("proof writes nothing");
        }
    }

    private ProcedureTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        FED.content = bytes;
        Held.soon(() -> {
            for (Finding finding : WORKSHOP.resolve(new InputFile(Path.of("fuzz.md"), "fuzz.md")).findings()) {
                if (finding.at().line() < 1 || finding.at().column() < 1 || WORDS.full(finding).isBlank()) {
                    throw new AssertionError(finding.id());
                }
            }
        });
    }
}
