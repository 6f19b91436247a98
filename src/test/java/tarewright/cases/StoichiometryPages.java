package tarewright.cases;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tarewright.chemistry.Equation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Species;

/**
 * Writes a stoichiometry problem as a procedure. Each species that the problem gives or asks for is a typed block of the kind
 * that its state
 * calls for; reactants of which the problem says nothing stand in excess, since a procedure has to provide them. An ion is
 * brought by a
 * salt that a school has.
 */
final class StoichiometryPages {
    private static final Map<String,
            String> SALTS = Map.of("MnO4^-", "KMnO4", "Fe^2+", "(NH4)2Fe(SO4)2", "H^+", "H2SO4", "S2O3^2-", "Na2S2O3",
            "Cl^-", "HCl");
    private static final List<String> PROPERTIES = List.of("mass", "amount", "volume", "gasvolume", "conc");

    private final Case row;
    private final Equation equation;
    private final Page page;
    /** Block name by formula, in the order of the page. */
    private final Map<String, String> names = new LinkedHashMap<>();
    private final List<String> given = new ArrayList<>();
    private final String wanted;

    private StoichiometryPages(Case row) {
        this.row = row;
        this.equation = Equation.parse(row.get("equation")).value().orElseThrow();
        this.page = new Page("Case " + row.id()).front("gases: ideal").wasted();
        this.wanted = row.find().contains(" of ") ? row.find().substring(row.find().indexOf(" of ") + 4) : row.given()
                .getOrDefault("product", "");
    }

    static Page of(Case row) {
        return new StoichiometryPages(row).page();
    }

    /** The name that the page gives to the block of a formula. */
    static String name(Case row, String formula) {
        StoichiometryPages pages = new StoichiometryPages(row);
        pages.page();
        return pages.names.get(formula);
    }

    private Page page() {
        page.block("reaction course", row.get("equation"), row.has("yield") ? "goes to: " + row.get("yield") : "");
        nameAll();
        for (Species species : species()) {
            boolean fixed = isFixed(species);
            if (fixed) {
                given.add(plain(species));
            }
        }
        for (Species species : species()) {
            if (given.contains(plain(species))) {
                givenBlock(species);
            } else if (plain(species).equals(wanted)) {
                wantedBlock(species);
            } else if (isReactant(species) && !plain(species).equals("H2O")) {
                spareBlock(species);
            }
        }
        ask();
        return page;
    }

    private void nameAll() {
        String[] words = {"first", "second", "third", "fourth", "fifth", "sixth", "seventh"};
        for (Species species : species()) {
            names.put(plain(species), words[names.size()] + " substance");
        }
    }

    private List<Species> species() {
        return equation.terms().stream().map(t -> t.species()).toList();
    }

    private static String plain(Species species) {
        return species.formula().plain();
    }

    private boolean isReactant(Species species) {
        return equation.left().stream().anyMatch(t -> t.species().equals(species));
    }

    /** Whether the problem says how much there is of a species: a strength alone is not an amount. */
    private boolean isFixed(Species species) {
        String s = plain(species);
        boolean amount = row.has("mass_" + s) || row.has("amount_" + s) || row.has("volume_" + s) || row.has("gasvolume_" + s);
        return amount || row.has("sample_mass") && s.equals(wanted);
    }

    private String kind(Species species) {
        String s = plain(species);
        if (row.has("conc_" + s) || row.find().equals("concentration of " + s) || species.formula().charge() != 0) {
            return "solution";
        }
        String state = species.state().map(st -> st.letters()).orElse("s");
        boolean volume = row.has("density_" + s);
        return state.equals("g") ? "gas" : state.equals("l") && volume ? "liquid" : "solid";
    }

    /** The fields that say what a block is. */
    private List<String> what(Species species) {
        String s = plain(species);
        List<String> fields = new ArrayList<>();
        String matter = kind(species).equals("solution") ? "solute: " : "substance: ";
        if (species.formula().charge() != 0) {
            fields.add(matter + SALTS.get(s));
            fields.add("acts as: " + s);
        } else {
            fields.add(matter + s);
        }
        if (kind(species).equals("solution")) {
            // What is to be found out stands in with a strength that dissolves.
            fields.add("strength: " + row.given().getOrDefault("conc_" + s, s.equals("Ca(OH)2") ? "0.010 mol/L" : "1.0 mol/L"));
        }
        if (row.has("density_" + s)) {
            fields.add("density: " + row.get("density_" + s));
        }
        if (row.has("purity_" + s)) {
            fields.add("purity: " + row.get("purity_" + s));
        }
        if (kind(species).equals("gas") && row.has("temperature")) {
            fields.add("at: " + row.get("temperature") + "; " + row.get("pressure"));
        }
        if (kind(species).equals("gas") && row.has("collected")) {
            fields.add("collected: " + row.get("collected"));
        }
        return fields;
    }

    private void givenBlock(Species species) {
        String s = plain(species);
        List<String> fields = what(species);
        boolean found = row.find().equals("concentration of " + s) || row.has("sample_mass") && s.equals(wanted);
        if (row.has("sample_mass") && s.equals(wanted)) {
            fields.add("mass: " + row.get("sample_mass"));
            fields.add("purity: 50 %");
        }
        amount(s, fields);
        if (!isReactant(species)) {
            fields.replaceAll(f -> kind(species).equals("gas") ? f.replaceFirst("^volume:", "wanted:") : f);
        }
        if (found) {
            fields.add("found by students: yes");
        }
        boolean read = !isReactant(species) && (found(wanted) || row.has("sample_mass"));
        if (read) {
            fields.removeIf(f -> f.startsWith("mass:"));
        }
        if (!isReactant(species)) {
            fields.add("made by: course");
        }
        boolean titrant = isReactant(species) && !found && row.find().startsWith("concentration of ") && !s.equals("H^+");
        if (titrant) {
            fields.removeIf(f -> f.startsWith("volume:"));
            fields.add("for: " + names.get(wanted));
        }
        block(species, fields);
        if (read) {
            page.block("reading weighed", "of: mass of " + names.get(s), "expect: " + row.get("mass_" + s));
        }
        if (titrant) {
            page.block("reading titre", "of: volume of " + names.get(s), "expect: " + row.get("volume_" + s));
        }
    }

    private boolean found(String formula) {
        return row.find().equals("concentration of " + formula) || row.has("sample_mass") && formula.equals(wanted);
    }

    private void amount(String s, List<String> fields) {
        Map.of("mass_", "mass: ", "amount_", "moles: ", "volume_", "volume: ", "gasvolume_", "volume: ")
                .forEach((prefix, field) -> {
            if (row.has(prefix + s)) {
                fields.add(field + row.get(prefix + s));
            }
        });
    }

    /** What is sought: made by the reaction, or just enough of it for what is given. */
    private void wantedBlock(Species species) {
        List<String> fields = what(species);
        boolean made = !isReactant(species) && given.stream().anyMatch(g -> isReactant(of(g)));
        fields.add(made ? "made by: course" : "for: " + names.get(given.get(0)));
        block(species, fields);
        if (row.has("actual_mass_" + plain(species))) {
            page.block("reading weighed", "of: mass of " + names.get(plain(species)),
                    "expect: " + row.get("actual_mass_" + plain(species)));
        }
    }

    private Species of(String formula) {
        return species().stream().filter(s -> plain(s).equals(formula)).findFirst().orElseThrow();
    }

    /** A reactant of which the problem says nothing is there in excess. */
    private void spareBlock(Species species) {
        List<String> fields = what(species);
        String over = given.stream().filter(g -> isReactant(of(g))).findFirst().orElse(wanted);
        fields.add("excess over: " + names.get(over));
        fields.add("at least: 2 times");
        block(species, fields);
    }

    private void block(Species species, List<String> fields) {
        page.block(kind(species) + " " + names.get(plain(species)), fields.toArray(String[]::new));
    }

    private void ask() {
        String block = names.get(wanted);
        String property = row.find().split(" of ")[0];
        switch (property) {
            case "limiting reactant", "enthalpy" -> {
                // What is sought stands in the account of the pot, or is asked by the caller.
            }
            case "percent yield" -> page.ask("weighed / most of " + block, "%");
            case "mass percent" -> page.ask("purity of " + block, "%");
            case "amount" -> page.ask("moles of " + block, "mol");
            case "particles" -> page.ask("moles of " + block + " * 6.02214076e23 1/mol", "");
            case "concentration" -> page.ask("strength of " + block, "mol/L");
            case "unreacted mass" -> page.ask("left over of " + block + " * molar mass of " + block, row.answerUnit());
            default -> page.ask(property + " of " + block, row.answerUnit());
        }
    }

    static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }
}
