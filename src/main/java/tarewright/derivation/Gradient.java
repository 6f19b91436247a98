package tarewright.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The partial derivatives of a figure with respect to each uncertain figure behind it. A figure that is used twice appears once, with
 * the sum of both ways, which is how correlation through a common input is kept (JCGM 100:2008, 5.2 and H.2).
 */
public final class Gradient {
    private final List<Part> parts;

    Gradient(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /**
     * One source of uncertainty.
     *
     * @param source the figure that brings it in
     * @param derivative of the figure in question with respect to it, in coherent SI units
     */
    public record Part(Figure source, double derivative) {
        /** Its share of the standard uncertainty: |derivative| × own uncertainty. */
        public double contribution() {
            return Math.abs(derivative) * source.ownUncertainty();
        }
    }

    static Gradient through(Figure figure, Step step, double[] of) {
        List<Part> parts = new ArrayList<>();
        Map<Figure, Integer> places = new IdentityHashMap<>();
        for (int i = 0; i < of.length; i++) {
            Gradient inner = step.from().get(i).gradient();
            // What is exact asks for no partial derivative, which may be dear to work out.
            if (inner.parts.isEmpty()) {
                continue;
            }
            double outer = step.partial(i, of);
            if (outer == 0) {
                continue;
            }
            for (Part part : inner.parts) {
                double derivative = outer * part.derivative();
                Integer place = places.get(part.source());
                if (place == null) {
                    places.put(part.source(), parts.size());
                    parts.add(new Part(part.source(), derivative));
                } else {
                    parts.set(place, new Part(part.source(), parts.get(place).derivative() + derivative));
                }
            }
        }
        if (figure.ownUncertainty() > 0) {
            parts.add(new Part(figure, 1));
        }
        return new Gradient(parts);
    }

    /** Every source, in the order in which the derivation meets them. */
    public List<Part> parts() {
        return parts;
    }

    /** The derivative with respect to one source; 0 if the figure does not depend on it. */
    public double withRespectTo(Figure source) {
        return parts.stream().filter(p -> p.source() == source).mapToDouble(Part::derivative).sum();
    }

    /** Combined standard uncertainty: the root of the sum of squared contributions of independent sources. */
    public double standardUncertainty() {
        return Math.sqrt(parts.stream().mapToDouble(p -> p.contribution() * p.contribution()).sum());
    }

    /** The sources that matter most, largest contribution first. */
    public List<Part> largest(int howMany) {
        return parts.stream().filter(p -> p.contribution() > 0)
                .sorted(Comparator.comparingDouble(Part::contribution).reversed()).limit(howMany).toList();
    }
}
