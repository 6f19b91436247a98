package tarewright.safety;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The standard's hazard, supplemental and precautionary statements by code. */
public final class StatementList {
    private final Map<String, Statement> byCode = new LinkedHashMap<>();

    public StatementList(List<Statement> statements) {
        statements.forEach(s -> byCode.put(s.code(), s));
    }

    public Optional<Statement> find(String code) {
        return Optional.ofNullable(byCode.get(code));
    }

    /**
     * The statement of a code that the tables use.
     *
     * @throws IllegalStateException if the list lacks it: the tables do not fit together
     */
    public Statement of(String code) {
        Statement statement = byCode.get(code);
        if (statement == null) {
            throw new IllegalStateException("no statement " + code);
        }
        return statement;
    }

    public List<Statement> all() {
        return List.copyOf(byCode.values());
    }
}
