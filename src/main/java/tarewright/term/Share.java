package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One of several equal shares of a print, for as many machines. Sections are dealt out whole, since a packet needs all of its section's documents.
 *
 * @param part from 1
 * @param of how many shares
 */
public record Share(int part, int of) {
    private static final Pattern TYPED = Pattern.compile("([0-9]{1,6})/([0-9]{1,6})");

    public Share {
        if (part < 1 || part > of) {
            throw new IllegalArgumentException(part + "/" + of);
        }
    }

    /** {@code 3/16}; empty if it is no share. */
    public static Optional<Share> read(String typed) {
        Matcher numbers = TYPED.matcher(typed.strip());
        if (!numbers.matches()) {
            return Optional.empty();
        }
        int part = Integer.parseInt(numbers.group(1));
        int of = Integer.parseInt(numbers.group(2));
        return part < 1 || part > of ? Optional.empty() : Optional.of(new Share(part, of));
    }

    /** What of a list falls to this share, in its order: each to exactly one share, no share more than one larger than another. */
    public <T> List<T> from(List<T> all) {
        List<T> mine = new ArrayList<>();
        for (int i = part - 1; i < all.size(); i += of) {
            mine.add(all.get(i));
        }
        return mine;
    }
}
