package tarewright.finding;

import java.util.List;
import java.util.Map;
import tarewright.text.Span;

/**
 * One thing to tell the author. An implementation is a record whose components are its typed fields; the words are made
 * from them elsewhere, by {@link #id()}, in any language.
 */
public interface Finding {
    /** A lasting name in lower case with hyphens, such as {@code unknown-unit}; the manual has an entry under it. */
    String id();

    Severity severity();

    /** The smallest stretch that shows the trouble. */
    Span at();

    /** Other places that explain it, the cause first; often none. */
    default List<Span> also() {
        return List.of();
    }

    /**
     * The typed fields by name, for the words: a record's components except its spans. A value is a String, a number,
     * an Optional of one, or a List of Strings.
     */
    default Map<String, Object> fields() {
        return Facts.of(this);
    }
}
