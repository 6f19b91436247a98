package tarewright.command;

import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** Why a file could not be taken in at all. */
enum Unreadable {
    NOT_UTF_8, TOO_LARGE, NO_ACCESS;

    Finding finding(Span at) {
        return switch (this) {
            case NOT_UTF_8 -> new NotUtf8(at);
            case TOO_LARGE -> new LargeFile(at);
            case NO_ACCESS -> new NoAccess(at);
        };
    }

    /** The bytes are no UTF-8 text. */
    record NotUtf8(Span at) implements Finding {
        @Override
        public String id() {
            return "not-utf-8";
        }

        @Override
        public Severity severity() {
            return Severity.ERROR;
        }
    }

    /** Larger than a procedure can be. */
    record LargeFile(Span at) implements Finding {
        @Override
        public String id() {
            return "file-beyond-limit";
        }

        @Override
        public Severity severity() {
            return Severity.ERROR;
        }
    }

    /** Not there, or not to be read. */
    record NoAccess(Span at) implements Finding {
        @Override
        public String id() {
            return "file-unreadable";
        }

        @Override
        public Severity severity() {
            return Severity.ERROR;
        }
    }
}
