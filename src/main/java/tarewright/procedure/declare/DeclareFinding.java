package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What can be wrong with a block or a field taken by itself. */
public sealed interface DeclareFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** A key that no block of this type, or no front matter, has. @param place the type word, or {@code front matter} */
    record UnknownField(String place, String key, List<String> suggestions, List<String> known, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "unknown-field";
        }
    }

    /** A key of other types of block. */
    record FieldOfOtherType(String place, String key, List<String> types, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "field-of-other-type";
        }
    }

    /** A field that is part of the language and that this version does not work out yet. */
    record NotYet(String what, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "not-yet";
        }
    }

    record FieldMissing(String place, String key, String example, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "field-missing";
        }
    }

    record ValueMissing(String key, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "value-missing";
        }
    }

    record UnknownSubstance(String text, List<String> suggestions, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "unknown-substance";
        }
    }

    /** A mixture of the table where one formula is needed. @param what it is, in the words of the table */
    record NoFormula(String text, String what, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "no-formula";
        }
    }

    /** Nothing fixes how much there is. @param ways the fields that would */
    record MissingQuantity(String name, String type, List<String> ways, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "missing-quantity";
        }
    }

    record AmountFixedTwice(String first, String second, Span at, List<Span> also) implements DeclareFinding {
        @Override
        public String id() {
            return "amount-fixed-twice";
        }
    }

    record NotAWholeNumber(String key, String text, int least, int most, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "not-a-whole-number";
        }
    }

    record NotAboveZero(String key, String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "not-above-zero";
        }
    }

    /** Less than nothing, where nothing would be allowed. */
    record BelowZero(String key, String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "below-zero";
        }
    }

    /** A fraction over the whole. */
    record PercentOver100(String key, String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "percent-over-100";
        }
    }

    /** A yield of nothing would need an infinite amount. */
    record YieldZero(String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "division-by-zero";
        }
    }

    /** A word where only certain words can stand. */
    record UnknownWord(String key, String text, List<String> suggestions, List<String> known, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "unknown-word";
        }
    }

    record UnknownProperty(String item, String text, List<String> known, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "unknown-property";
        }
    }

    /** An apparatus name that an earlier line has. */
    record ApparatusTwice(String name, Span at, List<Span> also) implements DeclareFinding {
        @Override
        public String id() {
            return "apparatus-twice";
        }
    }

    /** A room field that is none of temperature, pressure, humidity and volume, or one of them again. */
    record NotOfARoom(String text, Optional<String> already, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "not-of-a-room";
        }
    }

    /** A range where one value is needed. @param limits the same as a middle and its limits */
    record RangeHere(String text, String limits, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "range-here";
        }
    }

    /** A part of a {@code labels} field that is no number of rows or columns and no margin, one of them again, or too large. @param widest margin in millimetres */
    record NotLabelPaper(String text, int mostRows, int mostColumns, int widest, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "not-label-paper";
        }
    }

    record WordingMissing(Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "answer-missing";
        }
    }

    /** A shape that a field must have. @param shape an example of it */
    record BadShape(String key, String text, String shape, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "bad-shape";
        }
    }

    /** A value on the day of something that the procedure does not have. @param known what could be set */
    record UnknownDayValue(String text, List<String> suggestions, List<String> known, Span at) implements DeclareFinding {
        public UnknownDayValue {
            suggestions = List.copyOf(suggestions);
            known = List.copyOf(known);
        }

        @Override
        public String id() {
            return "unknown-day-value";
        }
    }

    /** A value on the day of something that is worked out from others. */
    record DayValueDerived(String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "day-value-derived";
        }
    }

    /** A value on the day of something that differs between the versions of the questions' numbers. */
    record DayValueInVersions(String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "day-value-in-versions";
        }
    }

    /** A value on the day that names no procedure and stands in several of one class. @param example how it is written for the first of them */
    record DayValueInSeveral(String text, List<String> procedures, String example, Span at) implements DeclareFinding {
        public DayValueInSeveral {
            procedures = List.copyOf(procedures);
        }

        @Override
        public String id() {
            return "day-value-in-several";
        }
    }

    /** The same thing twice on one day. */
    record DayValueTwice(String text, Span at, List<Span> also) implements DeclareFinding {
        @Override
        public String id() {
            return "day-value-twice";
        }
    }

    /** A block of a procedure in a term's file. */
    record NotInATerm(String type, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "not-in-a-term";
        }
    }

    /** Two versions of the questions' numbers with one and the same number. */
    record VersionTwice(String text, Span at, List<Span> also) implements DeclareFinding {
        public VersionTwice {
            also = List.copyOf(also);
        }

        @Override
        public String id() {
            return "version-twice";
        }
    }

    /** A section or a stock of a term that another of its files has too. @param other the file and the line where */
    record NamedInTwoFiles(String type, String name, String other, Span at, Span first) implements DeclareFinding {
        @Override
        public String id() {
            return "named-in-two-files";
        }

        @Override
        public List<Span> also() {
            return List.of(first);
        }
    }

    /** A date that is not in the calendar. */
    record NoSuchDay(String text, Span at) implements DeclareFinding {
        @Override
        public String id() {
            return "no-such-day";
        }
    }
}
