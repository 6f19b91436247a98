package tarewright.quantity;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.quantity.NumberReader.Read;

/** Reads one quantity, range or limits from the whole of a text. */
final class QuantityReader {
    private static final int LONGEST = 200;
    /** Group 1: the sign of limits. Else the sign or word of a range. */
    private static final Pattern JOIN = Pattern.compile(
            "(\\u00B1|\\+/-|\\+-)|(?<![A-Za-z])to(?![A-Za-z])|\\u2013|\\u2026|\\.\\.\\.?");
    private static final Pattern BRACKETED = Pattern.compile("^\\s*+\\(([^()]*)\\)");
    private static final Pattern HYPHEN = Pattern.compile(Blanks.ONE + "*+-" + Blanks.ONE + "*+(?=[0-9])");

    private final String text;
    private final Optional<Dimension> wanted;
    private final boolean difference;

    /** @param wanted the kind that is wanted, if only one is: it chooses among the mends of an unknown unit */
    QuantityReader(String text, Optional<Dimension> wanted, boolean difference) {
        this.text = text;
        this.wanted = wanted;
        this.difference = difference;
    }

    QuantityResult read() {
        if (text.length() > LONGEST) {
            return bad(new NumberTrouble.NotANumber(text.substring(0, LONGEST), Optional.empty(), 0, text.length()));
        }
        String plain = withoutBrackets();
        Read first = NumberReader.read(plain, Blanks.skip(plain, 0));
        if (first.trouble().isPresent()) {
            return bad(first.trouble().get());
        }
        Matcher hyphen = HYPHEN.matcher(plain).region(first.end(), plain.length());
        if (hyphen.lookingAt()) {
            return bad(new NumberTrouble.NotANumber(Blanks.strip(text),
                    Optional.of(first.number() + " to " + Blanks.strip(plain.substring(hyphen.end()))), 0, text.length()));
        }
        Matcher join = JOIN.matcher(plain);
        return join.find(first.end()) ? two(plain, first, join) : one(plain, first);
    }

    /** Limits may stand in brackets before the unit: {@code (0.20 ± 0.01) g}. Blanks in their place keep the offsets. */
    private String withoutBrackets() {
        Matcher bracketed = BRACKETED.matcher(text);
        if (!bracketed.find() || !JOIN.matcher(bracketed.group(1)).find()) {
            return text;
        }
        return text.substring(0, bracketed.start(1) - 1) + " " + bracketed.group(1) + " " + text.substring(bracketed.end());
    }

    private QuantityResult one(String plain, Read number) {
        UnitResult unit = unit(plain, number.end(), plain.length());
        return unit instanceof UnitResult.Bad trouble ? bad(trouble.trouble())
                : typed(number, ((UnitResult.Ok) unit).unit(), OptionalDouble.empty(), OptionalDouble.empty(), number.decimals());
    }

    private QuantityResult two(String plain, Read first, Matcher join) {
        Read second = NumberReader.read(plain, Blanks.skip(plain, join.end()));
        if (second.trouble().isPresent()) {
            return bad(second.trouble().get());
        }
        UnitResult left = unit(plain, first.end(), join.start());
        UnitResult right = unit(plain, second.end(), plain.length());
        if (left instanceof UnitResult.Bad trouble) {
            return bad(trouble.trouble());
        }
        if (right instanceof UnitResult.Bad trouble) {
            return bad(trouble.trouble());
        }
        Unit ofSecond = ((UnitResult.Ok) right).unit();
        Unit ofFirst = ((UnitResult.Ok) left).unit();
        boolean limits = join.group(1) != null;
        if (ofFirst.equals(Unit.ONE)) {
            ofFirst = ofSecond;
        } else if (ofSecond.equals(Unit.ONE)) {
            ofSecond = ofFirst;
        }
        return limits ? limits(first, ofFirst, second, ofSecond) : range(first, ofFirst, second, ofSecond);
    }

    private QuantityResult limits(Read first, Unit ofFirst, Read second, Unit ofSecond) {
        boolean relative = ofSecond.symbol().equals("%") && !ofFirst.dimension().equals(Dimension.NONE);
        if (!relative && !ofFirst.dimension().equals(ofSecond.dimension())) {
            return different(ofFirst, ofSecond);
        }
        double half = relative ? Math.abs(first.value()) * second.value() / 100
                : ofFirst.equals(ofSecond) ? second.value() : second.value() * ofSecond.factor() / ofFirst.factor();
        if (half <= 0) {
            return bad(new QuantityTrouble.NotPositive(second.number(), 0, text.length()));
        }
        int decimals = ofFirst.equals(ofSecond) ? Math.max(first.decimals(), second.decimals()) : first.decimals();
        return typed(first, ofFirst, OptionalDouble.of(half), OptionalDouble.empty(), decimals);
    }

    private QuantityResult range(Read first, Unit ofFirst, Read second, Unit ofSecond) {
        if (!ofFirst.dimension().equals(ofSecond.dimension())) {
            return different(ofFirst, ofSecond);
        }
        boolean same = ofFirst.equals(ofSecond);
        double upTo = same ? second.value() : ofFirst.fromSi(ofSecond.toSi(second.value()));
        if (upTo <= first.value()) {
            String low = second.number() + (same ? "" : " " + ofSecond.symbol());
            String mended = (low + (upTo == first.value() ? "" : " to " + first.number()) + " " + ofFirst.symbol()).strip();
            return bad(new QuantityTrouble.RangeBackwards(Blanks.strip(text), mended, 0, text.length()));
        }
        int decimals = same ? Math.max(first.decimals(), second.decimals()) : first.decimals();
        return typed(first, ofFirst, OptionalDouble.empty(), OptionalDouble.of(upTo), decimals);
    }

    private QuantityResult typed(Read number, Unit unit, OptionalDouble plusMinus, OptionalDouble upTo, int decimals) {
        Unit counted = difference && !unit.fromZero() ? new Unit(unit.symbol(), unit.dimension(), unit.factor()) : unit;
        Typed typed = new Typed(number.number(), number.value(), counted, !unit.equals(Unit.ONE), plusMinus, upTo, decimals,
                number.significant());
        return counted.fromZero() ? new QuantityResult.Ok(typed)
                : QuantityText.requireDimension(typed, text, Dimension.TEMPERATURE);
    }

    private UnitResult unit(String plain, int from, int to) {
        String unit = plain.substring(from, to);
        if (Blanks.strip(unit).isEmpty()) {
            return new UnitResult.Ok(Unit.ONE);
        }
        UnitResult result = wanted.isPresent() ? Units.parse(unit, wanted.get()) : Units.parse(unit);
        return result instanceof UnitResult.Bad bad ? new UnitResult.Bad(bad.trouble().shifted(from)) : result;
    }

    private QuantityResult different(Unit wantedUnit, Unit found) {
        return bad(new QuantityTrouble.WrongDimension(Blanks.strip(text), wantedUnit.dimension(), found.dimension(),
                found.symbol(), Units.of(wantedUnit.dimension()), 0, text.length()));
    }

    private static QuantityResult bad(QuantityTrouble trouble) {
        return new QuantityResult.Bad(trouble);
    }
}
