package tarewright.quantity;
/** Placeholder shape until the floor lands. */
public record Rounding(Direction direction, double divisionSi) {
    public enum Direction { NEAREST, UP, DOWN }
    public double apply(double si) {
        double q = si / divisionSi;
        return (direction == Direction.UP ? Math.ceil(q - 1e-9) : direction == Direction.DOWN ? Math.floor(q + 1e-9) : Math.rint(q)) * divisionSi;
    }
}
