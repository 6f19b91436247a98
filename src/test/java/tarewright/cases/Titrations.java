package tarewright.cases;

/** Titrations that several tests start from. */
final class Titrations {
    private Titrations() {
    }

    /** Of 20 mL portions of an acid of hidden strength, in mol/L, with an alkali of 0.1 mol/L. */
    static Page ofAcid(String strength) {
        return instruments(new Page("Titration")).block("reaction neutralising", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("solution sample", "solute: HCl", "strength: " + strength + " mol/L", "volume: 20.00 mL",
                        "measure with: pipette", "found by students: yes",
                        "label as: Sample A")
                .block("solution alkali", "solute: NaOH", "strength: 0.1000 mol/L", "for: sample", "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette").ask("strength of sample", "mol/L");
    }

    static Page instruments(Page page) {
        return page.wasted().block("apparatus", "burette: burette; capacity 50 mL; graduation 0.1 mL; reads to 0.05 mL",
                "pipette: pipette, 20 mL; delivers 20.00 mL; within 0.03 mL", "balance: balance; reads to 0.001 g");
    }
}
