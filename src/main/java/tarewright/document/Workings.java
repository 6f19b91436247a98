package tarewright.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Rounding;
import tarewright.wording.Numbers;
import tarewright.wording.UnitPart;
import tarewright.wording.Worked;
import tarewright.wording.WorkedLine;
import tarewright.wording.WorkedLines;

/** Worked lines as they are set. Over one document each line stands once: what was worked out before is not worked out again. */
final class Workings {
    private static final String NARROW = String.valueOf(Numbers.NARROW_SPACE);

    private final Draft draft;
    private final WorkedLines lines;
    private final Set<List<Text>> printed = new HashSet<>();

    Workings(Draft draft) {
        this.draft = draft;
        this.lines = WorkedLines.in(draft.procedure().setting().language());
    }

    /** Every line of a figure's calculation. */
    List<Piece.WorkedLine> all(Figure figure) {
        return lines.of(figure).stream().map(this::set).toList();
    }

    /** The lines of a figure's calculation that were not asked for before. */
    List<Piece.WorkedLine> fresh(Figure figure) {
        return lines.of(figure).stream().map(this::set)
                .filter(line -> printed.add(Typeset.joined(List.of(line.left(), line.right()), " "))).toList();
    }

    /** The last line alone, for running text. */
    List<Text> inline(Figure figure) {
        List<WorkedLine> all = lines.of(figure);
        WorkedLine last = all.get(all.size() - 1);
        List<Text> set = new ArrayList<>(name(last.subject()));
        Typeset.join(set, " ");
        Typeset.append(set, right(last));
        return set;
    }

    /** The last line alone, with a remark of this document's own. */
    Piece.WorkedLine last(Figure figure, String remark) {
        List<WorkedLine> all = lines.of(figure);
        WorkedLine last = all.get(all.size() - 1);
        return new Piece.WorkedLine(name(last.subject()), right(last), remark);
    }

    private Piece.WorkedLine set(WorkedLine line) {
        return new Piece.WorkedLine(name(line.subject()), right(line), remark(line));
    }

    private List<Text> right(WorkedLine line) {
        List<Text> set = new ArrayList<>();
        boolean resultAgain = !line.formula().isEmpty() && line.numbers().equals(List.of(line.result()));
        for (List<Worked> part : List.of(line.formula(), line.numbers())) {
            if (!part.isEmpty() && !(resultAgain && part == line.numbers())) {
                Typeset.join(set, set.isEmpty() ? "= " : " = ");
                Typeset.append(set, row(part));
            }
        }
        Typeset.join(set, (set.isEmpty() ? "" : " ") + (line.rounded().isPresent() ? "≈ " : "= "));
        Typeset.append(set, piece(line.result()));
        return set;
    }

    /** Why an amount is rounded as it is, or where a value comes from that is looked up. */
    private String remark(WorkedLine line) {
        if (line.rounded().isPresent()) {
            return rounding(line.figure()).orElse("");
        }
        return line.figure().step() instanceof Step.Relation relation ? draft.say("working.source", "source", draft.source(relation.source()))
                : "";
    }

    /** Why a figure is rounded as it is; empty if it is not. */
    Optional<String> rounding(Figure figure) {
        if (figure.step() instanceof Step.Set set) {
            return Optional.of(rounding(figure, set.rounding(), set.reason()));
        }
        return figure.step() instanceof Step.Read read ? Optional.of(rounding(figure, read.rounding(), Reason.INSTRUMENT))
                : Optional.empty();
    }

    private String rounding(Figure figure, Rounding rounding, Reason reason) {
        double division = rounding.divisionSi() / figure.unit().factor();
        String shown = draft.numbers().printed(division, figure.unit(), Math.max(0, Numbers.decimals(figure)));
        return draft.say("rounding." + reason.name().toLowerCase(Locale.ROOT), "division", shown);
    }

    private List<Text> name(Worked.Name name) {
        return draft.typeset().symbol(new Symbol(name.letter(), name.of(), name.kind()));
    }

    private List<Text> row(List<Worked> pieces) {
        return Typeset.joined(pieces.stream().map(this::piece).toList(), " ");
    }

    private List<Text> piece(Worked piece) {
        List<Text> set = new ArrayList<>();
        if (piece instanceof Worked.Name name) {
            return name(name);
        } else if (piece instanceof Worked.Number number) {
            return Text.words(number.digits());
        } else if (piece instanceof Worked.Amount amount) {
            return amount(amount);
        } else if (piece instanceof Worked.Sign sign) {
            return Text.words(sign.sign());
        } else if (piece instanceof Worked.Fraction fraction) {
            return List.of(new Text.Fraction(row(fraction.above()), row(fraction.below())));
        } else if (piece instanceof Worked.Bracketed bracketed) {
            bracket(set, row(bracketed.inside()));
        } else if (piece instanceof Worked.Raised raised) {
            if (raised.base() instanceof Worked.Amount) {
                bracket(set, piece(raised.base()));
            } else {
                Typeset.append(set, piece(raised.base()));
            }
            set.add(new Text.Superscript(Integer.toString(raised.exponent())));
        } else if (piece instanceof Worked.Selection selection) {
            Typeset.join(set, selection.words() + " ");
            Typeset.append(set, Typeset.joined(selection.of().stream().map(this::row).toList(), ", "));
        } else if (piece instanceof Worked.Looked looked) {
            Typeset.join(set, looked.words() + (looked.inputs().isEmpty() ? "" : " " + looked.at() + " "));
            Typeset.append(set, Typeset.joined(looked.inputs().stream().map(this::row).toList(), ", "));
        }
        return set;
    }

    private static void bracket(List<Text> set, List<Text> inside) {
        Typeset.join(set, "(");
        Typeset.append(set, inside);
        Typeset.join(set, ")");
    }

    private static List<Text> amount(Worked.Amount amount) {
        List<Text> set = new ArrayList<>(Text.words(amount.number()));
        if (amount.unit().isEmpty()) {
            return set;
        }
        List<List<Text>> above = amount.unit().stream().filter(u -> u.power() > 0).map(Workings::unit).toList();
        List<List<Text>> below = amount.unit().stream().filter(u -> u.power() < 0).map(Workings::unit).toList();
        Typeset.join(set, NARROW);
        Typeset.append(set, above.isEmpty() ? Text.words("1") : Typeset.joined(above, NARROW));
        if (!below.isEmpty()) {
            Typeset.join(set, below.size() > 1 ? "/(" : "/");
            Typeset.append(set, Typeset.joined(below, NARROW));
            Typeset.join(set, below.size() > 1 ? ")" : "");
        }
        return set;
    }

    private static List<Text> unit(UnitPart part) {
        List<Text> set = new ArrayList<>(Text.words(part.symbol()));
        if (Math.abs(part.power()) > 1) {
            set.add(new Text.Superscript(Integer.toString(Math.abs(part.power()))));
        }
        return part.struck() ? List.of(new Text.Struck(set)) : set;
    }
}
