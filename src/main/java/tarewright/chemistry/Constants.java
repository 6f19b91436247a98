package tarewright.chemistry;

/** Constants of nature and reference conditions, each with its uncertainty and source in one place. */
public enum Constants {
    /** The molar gas constant. */
    GAS_CONSTANT(8.31446261815324, 0, "J/(mol K)",
            "CODATA 2022 (and 2018): exact, product of the exact Avogadro and Boltzmann constants of the SI 2019"),
    /** The Avogadro constant. */
    AVOGADRO(6.02214076e23, 0, "1/mol", "SI Brochure, 9th edition (2019), exact"),
    /** The Faraday constant. */
    FARADAY(96485.33212331001, 0, "C/mol", "CODATA 2022 (and 2018): exact, elementary charge times Avogadro constant"),
    /** 0 °C on the kelvin scale. */
    ICE_POINT(273.15, 0, "K", "SI Brochure, 9th edition (2019), 2.3.1, exact"),
    /** The standard atmosphere. */
    STANDARD_ATMOSPHERE(101325, 0, "Pa", "10th CGPM (1954), Resolution 4, exact"),
    /** IUPAC's standard pressure. */
    STANDARD_PRESSURE(100000, 0, "Pa", "IUPAC Gold Book, standard pressure, exact"),
    /** Molar volume of an ideal gas at 0 °C and 100 kPa. */
    MOLAR_VOLUME_100_KPA(0.02271095464, 0, "m3/mol", "CODATA 2022 (and 2018), exact, printed to 10 digits"),
    /** Molar volume of an ideal gas at 0 °C and 101.325 kPa. */
    MOLAR_VOLUME_101_325_KPA(0.02241396954, 0, "m3/mol", "CODATA 2022 (and 2018), exact, printed to 10 digits"),
    /** Specific heat capacity of liquid water at 101.325 kPa; from 10 °C to 60 °C it lies within 0.3 % of this. */
    WATER_HEAT_CAPACITY(4184, 5, "J/(kg K)",
            "thermochemical calorie, 4.184 J; IAPWS-95 gives 4195 at 10 °C, 4184 at 20 °C, 4178 at 35 °C, 4185 at 60 °C"),
    /** Molar mass of dry air. */
    AIR_MOLAR_MASS(0.02896546, 0.00000017, "kg/mol",
            "Picard, Davis, Gläser and Fujii, Metrologia 45 (2008) 149, CIPM-2007 air with 400 ppm carbon dioxide;"
                    + " the uncertainty from memory");

    private final double value;
    private final double uncertainty;
    private final String unit;
    private final Provenance provenance;

    Constants(double value, double uncertainty, String unit, String source) {
        this.value = value;
        this.uncertainty = uncertainty;
        this.unit = unit;
        this.provenance = new Provenance(source, Confidence.LIBRARY);
    }

    /** In the coherent SI unit that {@link #unit()} names. */
    public double value() {
        return value;
    }

    /** Standard uncertainty in the same unit; 0 for what is exact. */
    public double uncertainty() {
        return uncertainty;
    }

    public String unit() {
        return unit;
    }

    public Provenance provenance() {
        return provenance;
    }
}
