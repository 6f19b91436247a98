package tarewright.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.FormulaTrouble;
import tarewright.finding.Facts;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What there is to say about a table of the teacher's own. An error keeps its row out; the other rows are used. */
public sealed interface OwnTableFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** The file is longer than {@code limit} UTF-16 units; nothing of it was read. */
    record OwnTableTooLarge(int length, int limit, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "own-table-too-large";
        }
    }

    /** There are more rows than {@code limit}; those from here on were not read. */
    record OwnTableTooLong(int limit, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "own-table-too-long";
        }
    }

    /** A quotation mark that nothing closes; from here on the file was not read. */
    record OwnTableUnreadable(Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "own-table-unreadable";
        }
    }

    /** The first line names a column that there is not. */
    record UnknownColumn(String column, List<String> suggestions, List<String> columns, Span at) implements OwnTableFinding {
        public UnknownColumn {
            suggestions = List.copyOf(suggestions);
            columns = List.copyOf(columns);
        }

        @Override
        public String id() {
            return "unknown-column";
        }
    }

    /** The first line names a column twice. */
    record ColumnGivenTwice(String column, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "column-given-twice";
        }
    }

    /** The first line does not name the column {@code name}; nothing else was read. */
    record NameColumnMissing(Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "name-column-missing";
        }
    }

    /** A row has more cells than the first line has columns. */
    record CellsLeftOver(int cells, int columns, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "cells-left-over";
        }
    }

    /** A row without the name of its substance. */
    record SubstanceNameMissing(Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "substance-name-missing";
        }
    }

    /** A name longer than {@code limit} UTF-16 units. */
    record SubstanceNameTooLong(int limit, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "substance-name-too-long";
        }
    }

    /** A substance that we do not know needs its state. */
    record SubstanceStateMissing(String name, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "substance-state-missing";
        }
    }

    /** A state that is none of {@code s}, {@code l}, {@code g}, {@code aq}. */
    record NotASubstanceState(String text, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "not-a-substance-state";
        }
    }

    /** A cell that should hold a density in g/mL. @param gramsPerMillilitre the likely meaning, if it was typed in kg/m3 */
    record NotADensity(String text, Optional<String> gramsPerMillilitre, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "not-a-density";
        }
    }

    /** A formula that cannot be read; words and fields are those of its trouble. */
    record FormulaInTable(FormulaTrouble trouble, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return trouble.id();
        }

        @Override
        public Map<String, Object> fields() {
            return new LinkedHashMap<>(Facts.ofTrouble(trouble));
        }
    }

    /** The file gives a substance, or one of its names, twice. */
    record SubstanceGivenTwice(String name, Span at, Span first) implements OwnTableFinding {
        @Override
        public String id() {
            return "substance-given-twice";
        }

        @Override
        public List<Span> also() {
            return List.of(first);
        }
    }

    /** A synonym that is the name of another substance of ours. @param other what it names */
    record SynonymIsAnotherName(String synonym, String other, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "synonym-is-another-name";
        }
    }

    /**
     * A substance of ours is replaced. To be noticed where it becomes another formula.
     *
     * @param name as the teacher writes it
     * @param ours the formula that it had, if the new one is not of the same composition
     */
    record SubstanceOverridden(String name, Optional<String> ours, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "substance-overridden";
        }

        @Override
        public Severity severity() {
            return ours.isPresent() ? Severity.WARNING : Severity.NOTE;
        }
    }

    /** A synonym that another substance of ours had. @param from the name of that substance */
    record SynonymMoved(String synonym, String from, Span at) implements OwnTableFinding {
        @Override
        public String id() {
            return "synonym-moved";
        }

        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }
}
