package tarewright.cases;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.Acidity;
import tarewright.chemistry.BalanceResult;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Balancing;
import tarewright.chemistry.CompositionResult;
import tarewright.chemistry.Equation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.MassComposition;
import tarewright.chemistry.Medium;
import tarewright.chemistry.NetIonic;
import tarewright.chemistry.Protolyte;
import tarewright.chemistry.Redox;
import tarewright.quantity.Digits;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/** What has no place in a procedure is asked of the public core. */
final class CoreCases {
    /** The textbook reckons with pKw = 14. */
    private static final Acidity WATER = new Acidity(14);

    private CoreCases() {
    }

    static Typed quantity(String text) {
        QuantityResult result = QuantityText.parse(text);
        return result instanceof QuantityResult.Ok ok ? ok.typed() : fail(text + ": " + result);
    }

    private static <T> T fail(String why) {
        throw new AssertionError(why);
    }

    // --- equations

    /** A skeleton completed with water, hydrogen or hydroxide ions and electrons. */
    static BalancedEquation inMedium(Case row) {
        Medium acid = row.has("proton_form") ? Medium.ACIDIC_HYDRONIUM : Medium.ACIDIC;
        BalanceResult result = Redox.inMedium(Equation.parse(row.get("skeleton")).value().orElseThrow(),
                row.get("medium").equals("acidic") ? acid : Medium.BASIC, row.has("half_reaction"));
        return result.value().orElseGet(() -> fail(row.id() + ": " + result));
    }

    static String netIonic(Case row) {
        NetIonic net = Balancing.net(Equation.parseIonic(row.get("complete_ionic")).value().orElseThrow());
        return net instanceof NetIonic.Net found ? found.equation().plain() : fail(row.id() + ": " + net);
    }

    // --- composition

    static Formula empirical(Case row) {
        if (row.has("molecular_formula")) {
            return MassComposition.simplest(StoichiometryPages.formula(row.get("molecular_formula")));
        }
        Map<String, Double> parts = new LinkedHashMap<>();
        row.given().forEach((name, value) -> {
            if (name.startsWith("percent_") || name.startsWith("mass_")) {
                parts.put(name.substring(name.indexOf('_') + 1), Double.parseDouble(value.split(" ")[0]));
            }
        });
        Formula empirical = row.speciesOf("percent_").isPresent()
                ? found(row, MassComposition.empiricalOfPercent(parts, MassComposition.RATIO_TOLERANCE, Door.TABLES.elements()))
                : found(row, MassComposition.empirical(parts, MassComposition.RATIO_TOLERANCE, Door.TABLES.elements()));
        return molarMass(row).map(m -> found(row, MassComposition.molecular(empirical, m, Door.TABLES.elements())))
                .orElse(empirical);
    }

    private static Formula found(Case row, CompositionResult result) {
        return result.value().orElseGet(() -> fail(row.id() + ": " + result));
    }

    /** In g/mol: given, or worked by a formula of the language from mass, volume, pressure and temperature of the gas. */
    private static Optional<Double> molarMass(Case row) {
        return row.has("molar_mass") ? Optional.of(row.number("molar_mass"))
                : row.has("pressure")
                        ? Optional.of(Door.open(FormulaPages.molarMassOfGas(row).markdown()).sound().answer().shownValue())
                        : Optional.empty();
    }

    // --- figures

    static String rounded(Case row) {
        return Digits.significantHalfEven(Double.parseDouble(row.get("value")), Integer.parseInt(row.get("sigfigs")));
    }

    static int figures(Case row) {
        return quantity(row.get("value")).significantDigits();
    }

    static int figuresOfProduct(Case row) {
        return Digits.figuresOfProduct(Arrays.stream(new String[] {"x1", "x2", "x3"}).filter(row::has)
                .mapToInt(x -> quantity(row.get(x)).significantDigits())
                .toArray());
    }

    // --- acids and bases

    /** A pH, a pOH, a concentration in mol/L or a fraction. */
    static double acidity(Case row) {
        if (row.has("pH")) {
            return Math.pow(10, -row.number("pH"));
        }
        if (row.has("hydroxide")) {
            return Math.pow(10, -WATER.ofStrongBase(row.number("hydroxide")));
        }
        double pH = pH(row);
        return switch (row.find()) {
            case "pH" -> pH;
            case "pOH" -> WATER.pKw() - pH;
            case "hydroxide" -> WATER.hydroxide(pH);
            case "hydronium" -> Math.pow(10, -pH);
            case "percent ionization" -> WATER.dissociated(row.number("concentration"), pKa(row));
            default -> fail(row.find());
        };
    }

    static double pKa(Case row) {
        return row.has("Ka") ? -Math.log10(row.number("Ka")) : WATER.pKw() + Math.log10(row.number("Kb"));
    }

    private static double pH(Case row) {
        if (row.has("strong_base")) {
            return WATER.ofStrongBase(row.number("concentration"));
        }
        if (row.has("conc_base")) {
            double acid = row.number("conc_acid");
            double base = row.number("conc_base");
            return row.has("acid") ? WATER.ofBuffer(acid, base, pKa(row))
                    : WATER.of(-acid, List.of(Protolyte.base(acid + base, pKa(row))));
        }
        if (row.has("titrant")) {
            double acid = row.number("volume") * row.number("concentration");
            double base = row.number("titrant_volume") * row.number("titrant_concentration");
            double volume = row.number("volume") + row.number("titrant_volume");
            return row.has("strong_acid") ? WATER.of((base - acid) / volume, List.of())
                    : WATER.of(base / volume, List.of(Protolyte.acid(acid / volume, pKa(row))));
        }
        double concentration = row.has("mass_percent")
                ? quantity(row.get("mass_percent")).si() * quantity(row.get("density"))
                        .si() / StoichiometryPages.formula(row.get("acid"))
                        .molarMass(Door.TABLES.elements())
                : row.number("concentration");
        return row.has("acid") ? WATER.ofWeakAcid(concentration, pKa(row)) : WATER.ofWeakBase(concentration, pKa(row));
    }
}
