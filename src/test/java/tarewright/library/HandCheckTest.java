package tarewright.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.quantity.Unit;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;
import tarewright.setting.Overrides;

/**
 * One procedure of each kind worked out by hand, at its own setting, from published constants only. What an instrument rounds must come out exactly; the rest to four figures.
 *
 * <p>Atomic weights: abridged, Prohaska et al., Pure Appl. Chem. 94 (2022) 573, Table 1. Gas constant: CODATA 2018. Vapour pressure of water at 20 °C: 2.3392 kPa, Wagner and Pruß,
 * J. Phys. Chem. Ref. Data 31 (2002) 387 (the CRC Handbook has 2.3388).
 */
class HandCheckTest {
    private static final double H = 1.0080;
    private static final double C = 12.011;
    private static final double N = 14.007;
    private static final double O = 15.999;
    private static final double NA = 22.990;
    private static final double MG = 24.305;
    private static final double AL = 26.982;
    private static final double S = 32.06;
    private static final double CL = 35.45;
    private static final double K = 39.098;
    private static final double CA = 40.078;
    private static final double CU = 63.546;
    private static final double WATER = 2 * H + O;
    private static final double CHALK = CA + C + 3 * O;

    private static final double R = 8.314462618;
    private static final double T = 293.15;
    /** Pressure of a gas over water at 20 °C in a room at 101.3 kPa, in kPa. Its product with a volume in mL, over R T in J/mol, is in mmol. */
    private static final double MOIST = 101.3 - 2.3392;

    /** Gas, metal limiting. 60 mL wanted is 2.4361 mmol, 59.21 mg of magnesium, 53.83 mm at 1.10 mg/mm: 54 mm are cut and weigh 59.4 mg. */
    @Test
    void hydrogenFromMagnesium() {
        Sheet sheet = new Sheet("hydrogen-from-magnesium");
        double wanted = MOIST * 60 / (R * T);
        sheet.exactly("ribbon", Property.LENGTH, Math.rint(wanted * MG / 1.10), "mm");
        sheet.exactly("ribbon", Property.LENGTH, 54, "mm");
        sheet.exactly("ribbon", Property.MASS, 0.059, "g");
        double metal = 59 / MG;
        sheet.about("ribbon", Property.MOLES, metal, "mmol");
        sheet.about("hydrogen", Property.VOLUME, metal * R * T / MOIST, "mL");
        sheet.about("hydrogen", Property.DRY, metal * R * T / 101.3, "mL");
        // Two of acid for each of metal, three times over, is 29.13 mL: up to the next millilitre.
        sheet.exactly("acid", Property.VOLUME, Math.ceil(3 * 2 * metal / 0.50), "mL");
        sheet.about("acid", Property.EXCESS, 30 * 0.50 / (2 * metal), "1");
        sheet.about("acid", Property.LEFT_OVER, 30 * 0.50 - 2 * metal, "mmol");
        sheet.exactly("acid", Property.CLASS_TOTAL, 30 * 12 * 1.1, "mL");
        sheet.read("weighed", 0.059, "g");
        sheet.read("gas volume", 60, "mL");
        sheet.answer("1", metal, "mmol");
        sheet.answer("2", metal, "mmol");
        sheet.answer("3", 60 / metal, "L/mol");
        sheet.limits("dissolving", "ribbon", metal);
    }

    /**
     * Titration. Three of alkali for one of citric acid: 20.0 mL × 0.0350 mol/L × 3 / 0.1000 mol/L = 21.00 mL, which the burette shows as it is. Each burette is rinsed with 2 × 10 mL and
     * holds 55 mL − 21 mL after the third titre, for which it was filled again; each pipette is rinsed with 2 × 4 mL (common practice, no source).
     */
    @Test
    void acidInADescaler() {
        Sheet sheet = new Sheet("acid-in-a-descaler");
        double molarMass = 6 * C + 8 * H + 7 * O;
        sheet.exactly("sample", Property.VOLUME, 20.0, "mL");
        sheet.about("sample", Property.MOLES, 0.700, "mmol");
        sheet.about("sample", Property.MOLAR_MASS, molarMass, "g/mol");
        sheet.exactly("alkali", Property.VOLUME, 21.00, "mL");
        sheet.exactly("alkali", Property.CLASS_TOTAL, (21.00 * 3 + 2 * 10 + 55 - 21) * 12 * 1.1, "mL");
        sheet.exactly("sample", Property.CLASS_TOTAL, (20.0 * 3 + 2 * 4) * 12 * 1.1, "mL");
        sheet.read("titre", 21.00, "mL");
        sheet.answer("2", 2.100, "mmol");
        sheet.answer("4", 2.100 / 3 / 20.0, "mol/L");
        sheet.answer("5", 0.0350 * molarMass, "g/L");
    }

    /** Standardisation. 0.0500 mol/L in 100.0 mL takes 0.530 g of sodium carbonate; 2 × 1.000 mmol / 0.0960 mol/L = 20.83 mL, read as 20.85 mL. */
    @Test
    void sodaMeasuresAnAcid() {
        Sheet sheet = new Sheet("soda-measures-an-acid");
        double soda = 2 * NA + C + 3 * O;
        assertEquals(0.530, Math.rint(0.00500 * soda * 1000) / 1000);
        sheet.exactly("soda", Property.MASS, 0.530, "g");
        sheet.about("soda", Property.MOLES, 530 / soda, "mmol");
        sheet.about("portion", Property.MOLES, 1.000, "mmol");
        sheet.exactly("acid", Property.VOLUME, Math.rint(2 * 0.0500 * 20.0 / 0.0960 / 0.05) * 0.05, "mL");
        sheet.read("titre", 20.85, "mL");
        sheet.answer("1", 5.30 / soda, "mol/L");
        sheet.answer("2", 530 / soda / 5, "mmol");
        sheet.answer("4", 2 * 530 / soda / 5 / 20.85, "mol/L");
    }

    /** Titration, in Spanish. 2.00 mL of vinegar at 0.920 mol/L take 18.40 mL of alkali at 0.1000 mol/L; 60.05 g of acetic acid in a mole. */
    @Test
    void vinagreGotaAGota() {
        Sheet sheet = new Sheet("vinagre-gota-a-gota");
        double aceticAcid = 2 * C + 4 * H + 2 * O;
        sheet.exactly("sosa", Property.VOLUME, 18.40, "mL");
        sheet.about("vinagre", Property.MOLES, 1.840, "mmol");
        sheet.read("gasto", 18.40, "mL");
        sheet.answer("1", 18.40, "mL");
        sheet.answer("2", 1.840, "mmol");
        sheet.answer("4", 0.920, "mol/L");
        sheet.answer("5", 0.920 * aceticAcid, "g/L");
    }

    /** Precipitation. 16.0 mmol of each ion wanted; 1.2 times as much carbonate is 48 mL; at most 1.601 g of chalk, 92 % of it 1.473 g. */
    @Test
    void chalkFromTwoSolutions() {
        Sheet sheet = new Sheet("chalk-from-two-solutions");
        sheet.about("calcium", Property.MOLES, 16.0, "mmol");
        sheet.exactly("carbonate", Property.VOLUME, 48, "mL");
        sheet.about("carbonate", Property.LEFT_OVER, 3.2, "mmol");
        sheet.about("chalk", Property.MOST, 0.0160 * CHALK, "g");
        sheet.about("chalk", Property.YIELD, 0.92 * 0.0160 * CHALK, "g");
        sheet.read("chalk found", 1.47, "g");
        sheet.answer("1", 16.0, "mmol");
        sheet.answer("2", 19.2, "mmol");
        sheet.answer("4", 0.0160 * CHALK, "g");
        sheet.answer("5", 100 * 1.47 / (0.0160 * CHALK), "%");
        sheet.limits("precipitation", "calcium", 16.0);
    }

    /**
     * A purity from a soluble gas. 3.4e-4 mol/(m³ Pa) at 298.15 K, d ln H / d(1/T) = 2300 K (Sander, Atmos. Chem. Phys. 23 (2023) 10901, carbon dioxide): a millilitre of water
     * at 20 °C holds H R T = 0.945 mL.
     */
    @Test
    void chalkInAnEggshell() {
        Sheet sheet = new Sheet("chalk-in-an-eggshell");
        double carbonate = 140 * 0.94 / CHALK;
        double held = 3.4e-4 * Math.exp(2300 * (1 / T - 1 / 298.15)) * R * T;
        assertEquals(0.945, held, 0.001);
        sheet.about("shell", Property.MOLES, carbonate, "mmol");
        sheet.about("fizz", Property.MOIST, carbonate * R * T / MOIST, "mL");
        sheet.about("fizz", Property.DISSOLVED, 5.0 * held, "mL");
        sheet.about("fizz", Property.MOLAR_VOLUME, R * T / MOIST, "L/mol");
        sheet.about("fizz", Property.VOLUME, carbonate * R * T / MOIST - 5.0 * held, "mL");
        sheet.read("gas and liquid", 33, "mL");
        sheet.read("air and acid", 5, "mL");
        sheet.read("gas volume", 28, "mL");
        double seen = MOIST * 28 / (R * T);
        sheet.answer("1", 5 * held, "mL");
        sheet.answer("2", 28 + 5 * held, "mL");
        double all = seen * (28 + 5 * held) / 28;
        sheet.answer("3", all, "mmol");
        sheet.answer("4", 100 * all * CHALK / 140, "%");
        sheet.limits("fizzing", "shell", carbonate);
    }

    /** The liquid limits. Ten volumes are 2 × 10 / 22.414 L/mol (CODATA, 273.15 K and 101.325 kPa) = 0.8923 mol/L; 16.24 mL wanted, 16.0 mL set; 59.1 mL of moist oxygen. */
    @Test
    void oxygenFromPeroxide() {
        Sheet sheet = new Sheet("oxygen-from-peroxide");
        double wanted = 2 * MOIST * 60 / (R * T);
        sheet.exactly("peroxide", Property.VOLUME, Math.rint(wanted / 0.30 / 0.5) * 0.5, "mL");
        sheet.exactly("peroxide", Property.VOLUME, 16.0, "mL");
        sheet.about("stock", Property.STRENGTH, 20 / 22.414, "mol/L");
        sheet.about("peroxide", Property.TAKEN, 16.0 * 0.30 / (20 / 22.414), "mL");
        sheet.about("oxygen", Property.MOLES, 2.40, "mmol");
        sheet.about("oxygen", Property.VOLUME, 2.40 * R * T / MOIST, "mL");
        sheet.value("stock for the class", 16.0 * 12 * 1.1 * 0.30 * 22.414 / 20, "mL");
        sheet.read("gas volume", 59, "mL");
        double oxygen = MOIST * 59 / (R * T);
        sheet.answer("1", oxygen, "mmol");
        sheet.answer("2", 2 * oxygen, "mmol");
        sheet.answer("3", 2 * oxygen / 16.0, "mol/L");
        sheet.limits("decomposition", "peroxide", 2.40);
        // Formation enthalpies: water -285.8 (CRC Handbook), H2O2(aq) -191.17 kJ/mol (Wagman et al., NBS tables, 1982).
        double heat = 4.80e-3 * (285.8 - 191.17) * 1000;
        assertEquals(heat / (16.0 * 4.18), sheet.reaction("decomposition").temperatureRise().orElseThrow().value(), 0.02);
    }

    /** Dry gas with a yield. 20 mL at 101.3 kPa are 0.8312 mmol; at 90 % this takes 0.9236 mmol, 49.4 mg of ammonium chloride: 0.049 g. */
    @Test
    void ammoniaInTheHood() {
        Sheet sheet = new Sheet("ammonia-in-the-hood");
        double salt = N + 4 * H + CL;
        double lime = CA + O;
        sheet.exactly("salt", Property.MASS, Math.rint(101.3 * 20 / (R * T) / 0.90 * salt) / 1000, "g");
        sheet.exactly("salt", Property.MASS, 0.049, "g");
        double taken = 49 / salt;
        sheet.about("salt", Property.MOLES, taken, "mmol");
        // Two of lime for two of salt, four times over.
        sheet.exactly("quicklime", Property.MASS, Math.ceil(4 * taken * lime) / 1000, "g");
        sheet.about("ammonia", Property.VOLUME, 0.90 * taken * R * T / 101.3, "mL");
        sheet.read("gas before", 20, "mL");
        double gas = 101.3 * 20 / (R * T);
        sheet.answer("1", taken, "mmol");
        sheet.answer("2", gas, "mmol");
        sheet.answer("3", (20 - 4) / 2.0, "1");
        sheet.answer("4", gas * (20 - 4) / 20 / 2.0, "mol/L");
        sheet.limits("driving out", "salt", taken / 2);
    }

    /** Dilution. 0.100 mol/L in 100.0 mL takes 2.497 g of the pentahydrate; each step takes half the flask's volume. */
    @Test
    void ladderOfBlue() {
        Sheet sheet = new Sheet("ladder-of-blue");
        double vitriol = CU + S + 4 * O + 5 * WATER;
        assertEquals(2.50, Math.rint(0.0100 * vitriol * 100) / 100);
        sheet.exactly("crystals", Property.MASS, 2.50, "g");
        sheet.about("crystals", Property.MOLES, 2500 / vitriol, "mmol");
        sheet.about("second", Property.TAKEN, 25.0, "mL");
        sheet.about("third", Property.TAKEN, 25.0, "mL");
        sheet.about("fourth", Property.TAKEN, 25.0, "mL");
        sheet.about("fourth", Property.MOLES, 10.0 / 16, "mmol");
        sheet.answer("1", 2.500 / vitriol / 0.1, "mol/L");
        sheet.answer("2", 12.5, "mL");
        sheet.answer("3", 10.0 / 16 * vitriol, "mg");
    }

    /** A hydrate. 3.10 g hold 12.58 mmol; 1.514 g stay; the balance shows 27.70 g, then 26.11 g over 24.60 g of crucible. */
    @Test
    void waterInEpsomSalt() {
        Sheet sheet = new Sheet("water-in-epsom-salt");
        double dry = MG + S + 4 * O;
        double salt = 3100 / (dry + 7 * WATER);
        sheet.about("salt", Property.MOLES, salt, "mmol");
        sheet.about("powder", Property.MOST, salt * dry / 1000, "g");
        sheet.read("with salt", 27.70, "g");
        sheet.read("after heating", Math.rint((24.60 + salt * dry / 1000) * 100) / 100, "g");
        sheet.read("powder left", 1.51, "g");
        sheet.answer("1", 1.59, "g");
        sheet.answer("2", 1590 / WATER, "mmol");
        sheet.answer("3", 1510 / dry, "mmol");
        sheet.answer("4", 1.59 / WATER / (1.51 / dry), "1");
    }

    /** Heat. 16.0 mmol of water form; -285.8 - (-230.0) = -55.8 kJ/mol (CRC Handbook, ions at infinite dilution); 82 g of liquid at 4.18 J/(g K) warm by 2.60 K. */
    @Test
    void heatOfNeutralisation() {
        Sheet sheet = new Sheet("heat-of-neutralisation");
        sheet.about("alkali", Property.MOLES, 16.0, "mmol");
        sheet.exactly("acid", Property.VOLUME, 42, "mL");
        double heat = 16.0 * (285.8 - 230.0);
        ResolvedReaction reaction = sheet.reaction("neutralisation");
        assertEquals(heat, reaction.heat().orElseThrow().value(), 0.001 * heat);
        assertEquals(heat / (82 * 4.18), reaction.temperatureRise().orElseThrow().value(), 0.003);
        sheet.read("start", 20.00, "°C");
        sheet.read("highest", 22.60, "°C");
        sheet.answer("1", 2.60, "K");
        sheet.answer("2", 82 * 4.18 * 2.60, "J");
        sheet.answer("3", 16.0, "mmol");
        sheet.answer("4", 82 * 4.18 * 2.60 / 16.0, "kJ/mol");
        sheet.limits("neutralisation", "alkali", 16.0);
    }

    /** A synthesis. 2.00 g of potassium sulfate, 11.48 mmol, give at most 22.96 mmol of alum, 10.89 g; 60 % of it is 6.53 g. */
    @Test
    void alumFromTwoSalts() {
        Sheet sheet = new Sheet("alum-from-two-salts");
        double sulfate = S + 4 * O;
        double potassium = 2000 / (2 * K + sulfate);
        double aluminium = 2 * AL + 3 * sulfate + 18 * WATER;
        double alum = K + AL + 2 * sulfate + 12 * WATER;
        sheet.about("potassium", Property.MOLES, potassium, "mmol");
        sheet.exactly("aluminium", Property.MASS, Math.ceil(1.05 * potassium * aluminium / 10) / 100, "g");
        sheet.about("alum", Property.MOST, 2 * potassium * alum / 1000, "g");
        sheet.about("alum", Property.YIELD, 0.60 * 2 * potassium * alum / 1000, "g");
        sheet.read("dish and crystals", 37.93, "g");
        sheet.read("crystals", 6.53, "g");
        sheet.answer("1", potassium, "mmol");
        sheet.answer("3", 2 * potassium * alum / 1000, "g");
        sheet.answer("4", 100 * 6.53 / (2 * potassium * alum / 1000), "%");
        sheet.answer("5", 100 * 12 * WATER / alum, "%");
        sheet.limits("growth", "potassium", potassium);
    }

    /** A resolved procedure beside its hand calculation. */
    private static final class Sheet {
        private static final double FOUR_FIGURES = 2e-4;
        private final Resolved resolved;

        Sheet(String procedure) {
            this.resolved = Library.resolve(Library.file(procedure), Overrides.NONE).value();
        }

        void exactly(String block, Property property, double value, String unit) {
            assertEquals(si(value, unit), figure(block, property).value(), 1e-9 * Math.abs(si(value, unit)), block + ": " + property.words());
        }

        void about(String block, Property property, double value, String unit) {
            assertEquals(si(value, unit), figure(block, property).value(), FOUR_FIGURES * Math.abs(si(value, unit)), block + ": " + property.words());
        }

        void read(String reading, double value, String unit) {
            double shown = resolved.reading(reading).orElseThrow().value().value();
            assertEquals(si(value, unit), shown, 1e-9 * Math.abs(si(value, unit)) + 1e-15, reading);
        }

        void value(String name, double value, String unit) {
            assertEquals(si(value, unit), resolved.values().get(name).value(), FOUR_FIGURES * Math.abs(si(value, unit)), name);
        }

        void answer(String question, double value, String unit) {
            Figure figure = resolved.answers().stream().filter(a -> a.number().equals(question)).findFirst().orElseThrow().value().orElseThrow();
            assertEquals(unit(unit).dimension(), figure.dimension(), "question " + question);
            assertEquals(si(value, unit), figure.value(), FOUR_FIGURES * Math.abs(si(value, unit)), "question " + question);
        }

        void limits(String reaction, String block, double extent) {
            ResolvedReaction.PotAccount pot = reaction(reaction).pots().get(0);
            assertEquals(List.of(block), pot.limiting());
            assertEquals(si(extent, "mmol"), pot.extent().orElseThrow().value(), FOUR_FIGURES * si(extent, "mmol"), reaction);
        }

        ResolvedReaction reaction(String name) {
            return resolved.reactions().stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
        }

        private Figure figure(String block, Property property) {
            return resolved.quantity(block).orElseThrow().figure(property).orElseThrow();
        }

        private static Unit unit(String symbol) {
            return symbol.equals("1") ? Unit.ONE : ((UnitResult.Ok) Units.parse(symbol)).unit();
        }

        private static double si(double value, String symbol) {
            return unit(symbol).toSi(value);
        }
    }
}
