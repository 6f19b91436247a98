package tarewright.safety;

/** Two matters, by their names, that the procedure means to bring together. */
public record Together(String one, String other) {
    boolean is(Matter a, Matter b) {
        return one.equals(a.name()) && other.equals(b.name()) || one.equals(b.name()) && other.equals(a.name());
    }
}
