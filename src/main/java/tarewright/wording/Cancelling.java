package tarewright.wording;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Strikes the units of a product or fraction that cancel: the same symbol as often above the line as below. */
final class Cancelling {
    /** Which units stand above and below, each with the power of every part that holds it. */
    private final Map<String, List<Integer>> above = new HashMap<>();
    private final Map<String, List<Integer>> below = new HashMap<>();

    private Cancelling() {
    }

    /** The pieces of a product, with units struck where they cancel; a sum as it is. */
    static List<Worked> in(List<Worked> pieces) {
        boolean fraction = pieces.size() == 1 && pieces.get(0) instanceof Worked.Fraction;
        List<Worked> top = fraction ? ((Worked.Fraction) pieces.get(0)).above() : pieces;
        List<Worked> bottom = fraction ? ((Worked.Fraction) pieces.get(0)).below() : List.of();
        if (isSum(top) || isSum(bottom)) {
            return pieces;
        }
        Cancelling units = new Cancelling();
        units.count(top, 1);
        units.count(bottom, -1);
        Map<String, Integer> struck = units.struck();
        List<Worked> over = strike(top, 1, struck);
        return fraction ? List.of(new Worked.Fraction(over, strike(bottom, -1, struck))) : over;
    }

    private static boolean isSum(List<Worked> pieces) {
        return pieces.stream().skip(1).anyMatch(piece -> piece instanceof Worked.Sign sign && !sign.isTimes());
    }

    private void count(List<Worked> pieces, int side) {
        for (Worked piece : pieces) {
            for (UnitPart part : unit(piece)) {
                (part.power() * side > 0 ? above : below).computeIfAbsent(part.symbol(), s -> new ArrayList<>())
                        .add(size(piece, part));
            }
        }
    }

    /** How often each unit cancels, for those of which that many can be struck on both sides. */
    private Map<String, Integer> struck() {
        Map<String, Integer> struck = new HashMap<>();
        Set<String> both = new HashSet<>(above.keySet());
        both.retainAll(below.keySet());
        for (String symbol : both) {
            int most = Math.min(sum(above.get(symbol)), sum(below.get(symbol)));
            int fits = within(above.get(symbol), most);
            if (fits == within(below.get(symbol), most)) {
                struck.put(symbol, fits);
            }
        }
        return struck;
    }

    private static List<Worked> strike(List<Worked> pieces, int side, Map<String, Integer> struck) {
        Map<String, Integer> top = new HashMap<>(struck);
        Map<String, Integer> bottom = new HashMap<>(struck);
        List<Worked> all = new ArrayList<>();
        for (Worked piece : pieces) {
            List<UnitPart> parts = new ArrayList<>();
            for (UnitPart part : unit(piece)) {
                Map<String, Integer> left = part.power() * side > 0 ? top : bottom;
                int size = size(piece, part);
                boolean cancels = left.getOrDefault(part.symbol(), 0) >= size;
                if (cancels) {
                    left.merge(part.symbol(), -size, Integer::sum);
                }
                parts.add(cancels ? part.cancelled() : part);
            }
            all.add(with(piece, parts));
        }
        return all;
    }

    private static int size(Worked piece, UnitPart part) {
        return Math.abs(part.power()) * (piece instanceof Worked.Raised raised ? raised.exponent() : 1);
    }

    private static int sum(List<Integer> sizes) {
        return sizes.stream().mapToInt(Integer::intValue).sum();
    }

    /** What the parts add up to that fit, taken in their order. */
    private static int within(List<Integer> sizes, int most) {
        int sum = 0;
        for (int size : sizes) {
            sum += sum + size <= most ? size : 0;
        }
        return sum;
    }

    private static List<UnitPart> unit(Worked piece) {
        Worked base = piece instanceof Worked.Raised raised ? raised.base() : piece;
        return base instanceof Worked.Amount amount ? amount.unit() : List.of();
    }

    private static Worked with(Worked piece, List<UnitPart> unit) {
        if (piece instanceof Worked.Amount amount) {
            return new Worked.Amount(amount.number(), unit);
        }
        return piece instanceof Worked.Raised raised && raised.base() instanceof Worked.Amount amount
                ? new Worked.Raised(new Worked.Amount(amount.number(), unit), raised.exponent()) : piece;
    }
}
