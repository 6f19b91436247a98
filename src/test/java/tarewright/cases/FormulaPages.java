package tarewright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes what needs no equation as a procedure: formulas, units, figures, heat, gas laws by the author's own formula. */
final class FormulaPages {
    /** SI Brochure, 9th edition, 2.2: exact. */
    private static final String AVOGADRO = "6.02214076e23 1/mol";
    /** CODATA 2018: exact product of the Avogadro and Boltzmann constants. */
    private static final String R = "8.31446261815324 J/(mol K)";
    private static final List<String> GASES = List.of("Ar", "C2H2");

    private FormulaPages() {
    }

    private static Page page(Case row) {
        return new Page("Case " + row.id()).wasted();
    }

    private static Page formula(Case row, String formula) {
        return page(row).ask(formula, row.answerUnit());
    }

    static Page molarMass(Case row) {
        return page(row).block("solid sample", "substance: " + row.get("formula"), "mass: 1.00 g")
                .ask("molar mass of sample", "g/mol");
    }

    static Page moleMass(Case row) {
        String substance = row.get("substance");
        Page page = page(row).block((GASES.contains(substance) ? "gas" : "solid") + " sample", "substance: " + substance,
                row.has("mass") ? "mass: " + row.get("mass") : "moles: " + row.get("amount"));
        String[] find = row.find().split(" of ");
        String count = find.length == 1 ? "" : atoms(substance, find[1]) + " * ";
        return switch (find[0]) {
            case "mass" -> page.ask(find.length == 1 ? "mass of sample" : count + "moles of sample * molar mass of " + find[1],
                    row.answerUnit());
            case "amount" -> page.ask("moles of sample", "mol");
            default -> page.ask(count + "moles of sample * " + AVOGADRO, "");
        };
    }

    private static int atoms(String formula, String element) {
        return StoichiometryPages.formula(formula).atoms().get(element);
    }

    static Page composition(Case row) {
        String part = row.find().substring(row.find().indexOf(" of ") + 4);
        if (row.has("sample_mass")) {
            return formula(row, row.get("mass_" + part) + " / " + row.get("sample_mass"));
        }
        String count = row.has("parts_per_formula") ? row.get("parts_per_formula") : "" + atoms(row.get("formula"), part);
        return formula(row, count + " * molar mass of " + part + " / molar mass of " + row.get("formula"));
    }

    static Page conversion(Case row) {
        return formula(row, switch (row.find()) {
            case "density" -> row.get("mass") + " / (" + row.get("volume") + ")";
            case "mass" -> row.get("density") + " * " + row.get("volume");
            case "volume" -> row.get("mass") + " / (" + row.get("density") + ")";
            default -> row.get("value");
        });
    }

    /** A sum keeps the decimals of the term that has fewest, by itself. */
    static Page sum(Case row) {
        String sign = row.get("operation").equals("add") ? " + " : " - ";
        return formula(row, row.get("x1") + " " + row.get("unit") + sign + row.get("x2") + " " + row.get("unit"));
    }

    /** A product has the figures that the author asks for. */
    static Page product(Case row, int figures) {
        List<String> factors = Stream.of("x1", "x2", "x3").filter(row::has).map(row::get).toList();
        String sign = row.get("operation").equals("multiply") ? " * " : " / ";
        String first = factors.get(0) + " " + row.get("unit");
        String formula = sign.equals(" / ") && row.get("unit").equals("m/s") ? factors.get(0) + " m / " + factors.get(1) + " s"
                : first + sign + String.join(sign, factors.subList(1, factors.size()));
        return page(row).text("1. What is it?\n\n   ```answer\n   value: " + formula + "\n   unit: " + row.get("unit")
                + "\n   shown to: "
                + figures + " figures\n   ```\n");
    }

    // --- solutions

    /** A solute weighed in, a solution by its strength, or a stock by its mass fraction and density. */
    static Page molarity(Case row) {
        Page page = page(row);
        if (row.has("mass_percent")) {
            return page.block("solution stock", "solute: " + row.get("solute"), "strength: " + row.get("mass_percent") + " w/w",
                    "density: " + row.get("density"), "volume: 100 mL").ask("strength of stock", "mol/L");
        }
        if (row.find().equals("mass")) {
            return page.block("solution ready", "solute: " + row.get("solute"), "strength: " + row.get("molarity"),
                    "volume: " + row.get("volume"))
                    .ask("moles of ready * molar mass of ready", row.answerUnit());
        }
        page.block("solid solute", "substance: " + row.get("solute"),
                row.has("mass") ? "mass: " + row.get("mass") : "moles: " + row.get("amount"));
        return page.ask("moles of solute / (" + row.get(row.find().equals("volume") ? "molarity" : "volume") + ")",
                row.answerUnit());
    }

    static Page dilution(Case row) {
        Page page = page(row).block("solution stock", "solute: NaCl", "strength: " + row.get("C1"));
        return switch (row.find()) {
            case "C2" -> page.block("solution weaker", "made from: stock", "volume: " + row.get("V1"),
                    "made up to: " + row.get("V2"))
                    .ask("strength of weaker", "mol/L");
            case "V1" -> page.block("solution weaker", "made from: stock", "strength: " + row.get("C2"),
                    "made up to: " + row.get("V2"))
                    .ask("taken of weaker", row.answerUnit());
            default -> page.block("solution aliquot", "portion of: stock", "volume: " + row.get("V1"))
                    .ask("moles of aliquot / (" + row.get("C2") + ")", row.answerUnit());
        };
    }

    static Page concentration(Case row) {
        if (row.has("mass_percent") && row.has("solution_volume")) {
            // The pages that give a mass fraction are about hydrochloric acid and sodium hydroxide.
            String solute = row.has("purity") ? "NaOH" : "HCl";
            return page(row).block("solution ready", "solute: " + solute, "strength: " + row.get("mass_percent") + " w/w",
                    "density: " + row.get("density"), "volume: " + row.get("solution_volume"))
                    .ask("moles of ready * molar mass of ready" + (row.has("purity") ? " / (" + row.get("purity") + ")" : ""),
                            row.answerUnit());
        }
        return formula(row, switch (row.find()) {
            case "mass percent", "ppm", "ppb" -> row.get("solute_mass") + " / (" + row.get("solution_mass") + ")";
            case "solution volume" -> row.get("solute_mass") + " / (" + row.get("mass_percent") + " * " + row.get("density")
                    + ")";
            case "solute mass" -> row.get("level") + " * " + row.get("solution_volume") + " * " + row.get("density");
            case "mass concentration" -> row.get("molarity") + " * molar mass of " + row.get("solute");
            case "mole fraction" -> moles(row, "solute") + " / (" + moles(row, "solute") + " + " + moles(row, "solvent") + ")";
            case "molality" -> moles(row, "solute") + " / (" + row.get("solvent_mass") + ")";
            default -> throw new AssertionError(row.find());
        });
    }

    private static String moles(Case row, String of) {
        return row.get(of + "_mass") + " / molar mass of " + row.get(of);
    }

    // --- gases

    /** p V / T is kept. */
    static Page gasLaw(Case row) {
        String p = row.has("P1") ? row.get("P1") : "";
        String t = row.has("T1") ? row.get("T1") : "";
        return formula(row, switch (row.find()) {
            case "P2" -> p + times(row, "V1", "V2") + times(row, "T2", "T1");
            case "V2" -> row.get("V1") + times(row, "P1", "P2") + times(row, "T2", "T1");
            case "T2" -> t + times(row, "P2", "P1") + times(row, "V2", "V1");
            default -> throw new AssertionError(row.find());
        });
    }

    private static String times(Case row, String above, String below) {
        return row.has(above) && row.has(below) ? " * " + row.get(above) + " / (" + row.get(below) + ")" : "";
    }

    static Page idealGas(Case row) {
        boolean measured = row.has("substance") && row.has("temperature") && row.has("pressure");
        if (measured) {
            String amount = row.has("volume") ? "volume: " + row.get("volume") : row.has("mass") ? "mass: " + row.get("mass")
                    : "moles: 1.000 mol";
            Page page = page(row).front("gases: ideal").block("gas sample", "substance: " + row.get("substance"), amount,
                    "at: " + row.get("temperature") + "; " + row.get("pressure"));
            return page.ask(switch (row.find()) {
                case "amount" -> "moles of sample";
                case "density" -> "mass of sample / volume of sample";
                default -> row.find() + " of sample";
            }, row.answerUnit());
        }
        return row.find().equals("pressure") ? formula(row, row.get("amount") + state(row)) : molarMassOfGas(row);
    }

    /** M = m R T / (p V). */
    static Page molarMassOfGas(Case row) {
        return page(row).ask(row.get("mass") + " * " + R + " * " + row.get("temperature") + " / (" + pressure(row) + " * "
                + row.get("volume") + ")", "g/mol");
    }

    /** Of the gas alone, where the pressure of the water vapour in it is given. */
    private static String pressure(Case row) {
        return row.has("water_vapour_pressure") ? "(" + row.get("pressure") + " - " + row.get("water_vapour_pressure") + ")"
                : row.get("pressure");
    }

    static Page overWater(Case row) {
        String alone = "(" + row.get("total_pressure") + " - " + row.get("water_vapour_pressure") + ")";
        return formula(row, row.find().equals("dry volume") ? row.get("volume") + " * " + alone + " / "
                + row.get("total_pressure") : alone);
    }

    static Page partialPressure(Case row) {
        String one = row.find().contains(" of ") ? row.get("amount_" + row.find().substring(row.find().indexOf(" of ") + 4)) : "";
        List<String> amounts = new ArrayList<>(row.given().keySet().stream().filter(k -> k.startsWith("amount_")).map(row::get)
                .toList());
        String all = "(" + String.join(" + ", amounts) + ")";
        return formula(row, switch (row.find().split(" of ")[0]) {
            case "mole fraction" -> one + " / " + all;
            case "total pressure" -> all + state(row);
            default -> row.has("total_pressure") ? row.get("total_pressure") + " * " + one + " / " + all : one + state(row);
        });
    }

    private static String state(Case row) {
        return " * " + R + " * " + row.get("temperature") + " / " + row.get("volume");
    }

    static Page henry(Case row) {
        return formula(row, switch (row.find()) {
            case "concentration" -> row.get("concentration1") + " * " + row.get("pressure2") + " / " + row.get("pressure1");
            case "henry constant" -> row.get("concentration") + " / (" + row.get("pressure") + ")";
            case "mass concentration" -> row.get("henry_constant") + " * " + row.get("pressure") + " * molar mass of "
                    + row.get("gas");
            default -> row.get("concentration") + " / (" + row.get("henry_constant") + ")";
        });
    }

    /** Dry and moist volumes of the same gas tell the vapour pressure: p(H2O) = p (1 - V(dry) / V(moist)). */
    static Page vapourPressure(Case row) {
        return page(row).front("gases: ideal").block("gas sample", "substance: N2", "moles: 1.0 mmol", "collected: over water",
                "at: " + row.get("temperature") + "; 101.325 kPa").ask("101.325 kPa * (1 - dry of sample / moist of sample)",
                        row.answerUnit());
    }

    // --- heat

    static Page calorimetry(Case row) {
        String rise = row.has("temperature_change") ? "(" + row.get("temperature_change").replace("degC", "K") + ")"
                : row.has("T_final") ? "(" + row.get("T_final") + " - " + row.given()
                        .getOrDefault("T_initial", row.given().getOrDefault("T_cold", "")) + ")" : "";
        if (row.has("fuel")) {
            String heat = "moles of fuel * " + row.get("enthalpy_of_combustion").substring(1);
            Page page = page(row).block((row.get("fuel").equals("C") ? "solid" : "gas") + " fuel",
                    "substance: " + row.get("fuel"), "mass: " + row.get("mass_fuel"));
            return page.ask(row.has("mass_water") ? heat + " / (" + row.get("mass_water") + " * " + row.get("specific_heat")
                    + ")" : heat + " / " + rise,
                    row.answerUnit());
        }
        return formula(row, switch (row.find()) {
            case "heat" -> content(row, rise);
            case "specific heat" -> row.get("heat") + " / (" + row.get("mass") + " * " + rise + ")";
            case "heat capacity" -> row.get("mass") + " * " + row.get("specific_heat");
            case "heat of reaction" -> "-(" + content(row, rise) + ")";
            case "initial temperature of hot body" -> row.get("T_final") + " + " + body(row, "cold") + " * " + rise + " / ("
                    + body(row, "hot") + ")";
            case "final temperature" -> row.get("T_cold") + " + " + body(row, "hot") + " * (" + row.get("T_hot") + " - "
                    + row.get("T_cold") + ") / ("
                    + body(row, "hot") + " + " + body(row, "cold") + ")";
            default -> throw new AssertionError(row.find());
        });
    }

    private static String content(Case row, String rise) {
        String body = row.get("mass") + " * " + row.get("specific_heat");
        return row.has("calorimeter_heat_capacity") ? "(" + body + " + " + row.get("calorimeter_heat_capacity") + ") * " + rise
                : body + " * " + rise;
    }

    private static String body(Case row, String which) {
        return row.get("mass_" + which) + " * " + row.get("specific_heat_" + which);
    }

    static Page enthalpy(Case row) {
        if (row.has("step1")) {
            return formula(row, hess(row));
        }
        if (row.has("substance")) {
            String s = row.get("substance");
            Page page = page(row).block((GASES.contains(s) ? "gas" : "solid") + " sample", "substance: " + s,
                    row.has("mass_" + s) ? "mass: " + row.get("mass_" + s) : "moles: " + row.get("amount_" + s));
            return page.ask(row.has("heat_released") ? "-(" + row.get("heat_released") + ") / moles of sample"
                    : "-(" + row.get("enthalpy_per_mole") + ") * moles of sample", row.answerUnit());
        }
        if (row.has("heat_released")) {
            String limiting = row.has("mass_Zn") ? "Zn" : "Cl2";
            return StoichiometryPages.of(row)
                    .ask("-(" + row.get("heat_released") + ") / moles of " + StoichiometryPages.name(row, limiting),
                    row.answerUnit());
        }
        return formula(row, sumOfFormation(row));
    }

    private static String sumOfFormation(Case row) {
        var equation = tarewright.chemistry.Equation.parse(row.get("equation")).value().orElseThrow();
        List<String> terms = new ArrayList<>();
        for (int i = 0; i < equation.terms().size(); i++) {
            var term = equation.terms().get(i);
            String sign = i < equation.left().size() ? "-" : "+";
            terms.add(sign + " " + term.coefficient() + " * (" + row.get("dHf_" + term.species().plain()) + ")");
        }
        return String.join(" ", terms).replaceFirst("^[+] ", "");
    }

    /** How often each step is taken, and which way, so that the steps add up to the target. */
    private static String hess(Case row) {
        int[] times = switch (row.id()) {
            case "enth-016" -> new int[] {1, 2};
            case "enth-017" -> new int[] {1, 1};
            case "enth-018" -> new int[] {-1, -1};
            default -> throw new AssertionError(row.id());
        };
        return IntStream.range(0, 2).mapToObj(i -> times[i] + " * (" + row.get("dH" + (i + 1)) + ")")
                .reduce((a, b) -> a + " + " + b).orElseThrow();
    }
}
