package tarewright.safety;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part of a matter with the row that speaks for it and its mass percentage, in the row's own way of counting.
 *
 * @param low two standard uncertainties below
 * @param best as stated or worked out
 * @param high two above, 100 at most
 * @param estimated whether a density was missing and the stricter side was taken
 */
record Dose(SubstanceHazards row, double low, double best, double high, boolean estimated, boolean unstated) {
    private static final double COVERAGE = 2;

    static Dose of(SubstanceHazards row, Content content) {
        if (content instanceof Content.Unstated) {
            return new Dose(row, 0, 100, 100, false, true);
        }
        Range range = range(content, row);
        return new Dose(row, range.low(), range.best(), range.high(), range.estimated(), false);
    }

    /** The dose of a part by the row that speaks for it at its strength; empty if the tables do not know it. */
    static Optional<Dose> of(Part part, Form form, SubstanceTable table) {
        Optional<Dose> first = table.find(part, form, roughly(part.content())).map(row -> of(row, part.content()));
        return first.filter(dose -> dose.row().fits(form, dose.best()))
                .or(() -> first.flatMap(dose -> table.find(part, form, dose.best())).map(row -> of(row, part.content())));
    }

    double at(Level level) {
        return switch (level) {
            case LOW -> low;
            case BEST -> best;
            case HIGH -> high;
        };
    }

    /** Which end of the uncertainty is looked at. */
    enum Level {
        LOW, BEST, HIGH
    }

    private record Range(double low, double best, double high, boolean estimated) {
        static Range of(double percent, double uncertainty, boolean estimated) {
            double spread = COVERAGE * uncertainty;
            return new Range(clip(percent - spread), clip(percent), clip(percent + spread), estimated);
        }

        private static double clip(double percent) {
            return Math.min(100, Math.max(0, percent));
        }
    }

    /** A mass percentage before the row is known; only for choosing among rows for different strengths. */
    private static double roughly(Content content) {
        if (content instanceof Content.MassShare mass) {
            return 100 * mass.share();
        }
        if (content instanceof Content.Pure || content instanceof Content.Unstated) {
            return 100;
        }
        return content instanceof Content.VolumeShare volume ? 100 * volume.share() : 0;
    }

    private static Range range(Content content, SubstanceHazards row) {
        if (content instanceof Content.MassShare mass) {
            double ratio = waterRatio(row, mass.countedAs());
            return Range.of(100 * mass.share() * ratio, 100 * mass.uncertainty() * ratio, false);
        }
        if (content instanceof Content.Molar molar) {
            if (row.molarMass().isEmpty()) {
                return new Range(0, 100, 100, true);
            }
            double perMolar = row.molarMass().getAsDouble() / 10 / density(molar.density(), row);
            return Range.of(molar.molPerLitre() * perMolar, molar.uncertainty() * perMolar, molar.density().isEmpty());
        }
        if (content instanceof Content.MassPerVolume mass) {
            double perUnit = 100 * waterRatio(row, mass.countedAs()) / density(mass.density(), row);
            return Range.of(mass.gramsPerMillilitre() * perUnit, mass.uncertainty() * perUnit, mass.density().isEmpty());
        }
        if (content instanceof Content.VolumeShare volume) {
            double perShare = 100 * volume.pureDensity().orElse(2) / density(volume.density(), row);
            return Range.of(volume.share() * perShare, volume.uncertainty() * perShare,
                    volume.density().isEmpty() || volume.pureDensity().isEmpty());
        }
        return Range.of(100, 0, false);
    }

    private static double density(OptionalDouble given, SubstanceHazards row) {
        return given.orElse(row.lightest());
    }

    /** How much more the row's formula weighs than the one that is counted, if they differ by water of crystallisation alone. */
    private static double waterRatio(SubstanceHazards row, Optional<String> countedAs) {
        if (countedAs.isEmpty() || row.formulas().isEmpty()) {
            return 1;
        }
        String ours = Names.formula(row.formulas().get(0));
        String theirs = Names.formula(countedAs.get());
        if (ours.equals(theirs) || !Names.dry(ours).equals(Names.dry(theirs))) {
            return 1;
        }
        double more = (waters(ours) - waters(theirs)) * WATER;
        double molarMass = row.molarMass().orElse(0);
        return molarMass > 0 && molarMass - more > 0 ? molarMass / (molarMass - more) : 1;
    }

    /** Molar mass of water, g/mol (CIAAW 2021 abridged atomic weights). */
    private static final double WATER = 18.015;

    private static double waters(String formula) {
        int stop = formula.indexOf('.');
        if (stop < 0 || !formula.endsWith("H2O")) {
            return 0;
        }
        String count = formula.substring(stop + 1, formula.length() - 3);
        if (count.isEmpty()) {
            return 1;
        }
        return count.chars().allMatch(Character::isDigit) && count.length() < 4 ? Integer.parseInt(count) : 0;
    }
}
