package tarewright.procedure.syntax;

import java.util.List;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What can be wrong with the notation itself, before anything is known of its meaning. */
public sealed interface SyntaxFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** The file is longer than {@code limit} UTF-16 units; nothing of it was read. */
    record FileTooLarge(int length, int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "file-too-large";
        }
    }

    /**
     * A control character or half a surrogate pair, read as U+FFFD.
     *
     * @param character as {@code U+0000}
     * @param times in the file
     */
    record ControlCharacter(String character, int times, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "control-character";
        }
    }

    /** No second {@code ---} line. */
    record FrontMatterNotClosed(Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "front-matter-not-closed";
        }
    }

    /**
     * A line where a field should stand, without a colon or with nothing before it.
     *
     * @param where a block's type, or {@code front matter}
     */
    record NotAField(String where, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "not-a-field";
        }
    }

    record KeyGivenTwice(String key, Span at, Span first) implements SyntaxFinding {
        @Override
        public String id() {
            return "key-given-twice";
        }

        @Override
        public List<Span> also() {
            return List.of(first);
        }
    }

    /**
     * More fields than are read.
     *
     * @param where a block's type, or {@code front matter}
     */
    record TooManyFields(String where, int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "too-many-fields";
        }
    }

    record ValueTooLong(String key, int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "value-too-long";
        }
    }

    /**
     * A word behind a fence that looks meant as a type.
     *
     * @param nearest the types that it may mean, the nearest first
     */
    record UnknownBlockType(String type, List<String> nearest, Span at) implements SyntaxFinding {
        public UnknownBlockType {
            nearest = List.copyOf(nearest);
        }

        @Override
        public String id() {
            return "unknown-block-type";
        }
    }

    record NameMissing(String type, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "name-missing";
        }
    }

    record NameGivenTwice(String name, Span at, Span first) implements SyntaxFinding {
        @Override
        public String id() {
            return "name-given-twice";
        }

        @Override
        public List<Span> also() {
            return List.of(first);
        }
    }

    /** A {@code reaction} with nothing in it. */
    record EquationMissing(Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "equation-missing";
        }
    }

    /**
     * A fence opens inside a typed block.
     *
     * @param inner its type
     * @param outer the type of the block around it
     */
    record BlockInsideBlock(String inner, String outer, Span at, Span around) implements SyntaxFinding {
        @Override
        public String id() {
            return "block-inside-block";
        }

        @Override
        public List<Span> also() {
            return List.of(around);
        }
    }

    /**
     * A fence that nothing closes.
     *
     * @param fence what would close it
     */
    record FenceNotClosed(String fence, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "fence-not-closed";
        }
    }

    /** Four spaces or more before the fence made it plain code. */
    record BlockIndentedTooFar(String type, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "block-indented-too-far";
        }
    }

    record BraceNotClosed(Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "brace-not-closed";
        }
    }

    record BraceNotOpened(Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "brace-not-opened";
        }
    }

    record ReferenceEmpty(Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "reference-empty";
        }
    }

    record CommentNotClosed(Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "comment-not-closed";
        }
    }

    /** A tag will be printed as it stands. */
    record HtmlShownAsText(String html, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "html-shown-as-text";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** {@code [label]: destination} with no link to it. */
    record DefinitionNotUsed(String label, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "definition-not-used";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    record NestedTooDeep(int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "nested-too-deep";
        }
    }

    record TooManyBlocks(int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "too-many-blocks";
        }
    }

    record TooManyReferences(int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "too-many-references";
        }
    }

    /** Further findings, of which only the first one's place is told. */
    record AndMore(int told, int more, Severity worst, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "and-more";
        }

        /** As severe as the worst that is not listed. */
        @Override
        public Severity severity() {
            return worst;
        }
    }

    record TableTooLarge(int limit, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "table-too-large";
        }
    }

    /** What stands beyond the last column of a table's head. */
    record CellLeftOver(int columns, Span at) implements SyntaxFinding {
        @Override
        public String id() {
            return "cell-left-over";
        }
    }
}
