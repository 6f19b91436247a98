package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.Equation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.chemistry.SubstanceNames;

class SubstancesTest {
    private static final ReferenceTables TABLES = Tables.load();

    @Test
    void manySubstancesAreKnown() {
        assertTrue(TABLES.substances().all().size() >= 250, "only " + TABLES.substances().all().size());
    }

    @Test
    void noNameMeansTwoSubstances() {
        Map<String, String> owner = new HashMap<>();
        for (Substance substance : TABLES.substances().all()) {
            for (String name : Stream.concat(Stream.of(substance.name()), substance.synonyms().stream()).toList()) {
                String before = owner.put(SubstanceNames.key(name), substance.id());
                assertEquals(null, before, name);
            }
        }
    }

    @Test
    void idsAreUniqueAndPlain() {
        List<String> ids = TABLES.substances().all().stream().map(Substance::id).toList();
        assertEquals(ids.size(), ids.stream().distinct().count());
        assertTrue(ids.stream().allMatch(id -> id.matches("[a-z0-9]+(-[a-z0-9]+)*")));
    }

    /** A formula of one substance is no name of another, or the author could not tell which is read. */
    @Test
    void noSynonymIsAnotherSubstancesFormula() {
        for (Substance substance : TABLES.substances().all()) {
            for (String name : substance.synonyms()) {
                Optional<Formula> asFormula = Formula.parse(name).value();
                asFormula.ifPresent(formula -> assertTrue(TABLES.substances().of(formula).stream()
                        .allMatch(other -> other.equals(substance)), name));
            }
        }
    }

    /** Everyday and older names: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"Baking soda, NaHCO3", "blue vitriol, CuSO4.5H2O", "copper (II) sulfate, CuSO4", "sulphuric acid, H2SO4",
            "aluminum, Al", "ethanoic acid, CH3COOH", "muriatic acid, HCl", "caustic soda, NaOH", "washing soda, Na2CO3.10H2O",
            "ethyl-alcohol, C2H5OH", "slaked lime, Ca(OH)2", "Epsom salts, MgSO4.7H2O", "hypo, Na2S2O3.5H2O",
            "Mohr’s salt, (NH4)2Fe(SO4)2.6H2O", "propan 2 ol, CH3CH(OH)CH3", "potassium manganate(VII), KMnO4",
            "saltpeter, KNO3", "IRON ( II ) SULPHATE HEPTAHYDRATE, FeSO4.7H2O", "acetone, CH3COCH3"})
    void everydayNamesAreUnderstood(String name, String formula) {
        assertEquals(Optional.of(formula), TABLES.substances().named(name).flatMap(Substance::formula).map(Formula::plain));
    }

    /** Names that a shop uses for more than one substance must not pick one of them. */
    @ParameterizedTest
    @CsvSource({"lime", "lye", "pool chlorine", "copper sulfate", "EDTA", "alcohol", "rubbing alcohol"})
    void ambiguousNamesAreLeftOut(String name) {
        assertTrue(TABLES.substances().named(name).isEmpty());
    }

    static List<Row> molarMasses() {
        return Rows.of("formula-checks.csv");
    }

    /** PubChem by way of the identifiers of CalebBell/chemicals 1.5.2: the molecular formula and mass under the name. */
    @ParameterizedTest
    @MethodSource("molarMasses")
    void formulaAndMolarMassAgreeWithAnOpenDataset(Row row) {
        Formula formula = TABLES.substances().named(row.text("name")).orElseThrow().formula().orElseThrow();
        assertTrue(formula.sameComposition(row.formula("formula_hill")), formula.plain());
        // The dataset uses older atomic weights for a few elements.
        assertEquals(1, formula.molarMass(TABLES.elements()) / row.number("molar_mass_g_mol"), 2.5e-4, row.text("name"));
    }

    @Test
    void hydratesAreSubstancesOfTheirOwn() {
        Substance hydrate = TABLES.substances().named("copper(II) sulfate pentahydrate").orElseThrow();
        Substance anhydrous = TABLES.substances().named("copper(II) sulfate").orElseThrow();
        assertEquals(anhydrous.formula(), hydrate.formula().map(Formula::anhydrous));
        for (Substance substance : TABLES.substances().all()) {
            boolean hydrated = substance.formula().map(f -> f.watersOfCrystallisation().isPresent()).orElse(false);
            boolean named = substance.name().matches(".*(mono|di|tri|tetra|penta|hexa|hepta|octa|nona|deca|dodeca)hydrate")
                    || substance.name().matches(".*(hexa|octa)decahydrate");
            assertEquals(named, hydrated, substance.name());
        }
    }

    @Test
    void aFormulaFindsItsSubstance() {
        assertEquals("hydrochloric acid", TABLES.substances().of(formula("HCl"), State.AQUEOUS).orElseThrow().name());
        assertEquals("hydrogen chloride", TABLES.substances().of(formula("HCl"), State.GAS).orElseThrow().name());
        assertEquals("acetic acid", TABLES.substances().of(formula("HC2H3O2")).get(0).name());
        assertEquals("glucose", TABLES.substances().of(formula("C6H12O6")).get(0).name());
        assertEquals(List.of(), TABLES.substances().of(formula("UF6")));
    }

    @Test
    void isomersAreNotMistakenForEachOther() {
        List<String> names = TABLES.substances().of(formula("C3H6O")).stream().map(Substance::name).toList();
        assertEquals(List.of("propanone", "propanal"), names);
        assertTrue(TABLES.enthalpies().of(formula("CH3COCH3"), State.LIQUID).isPresent());
        assertTrue(TABLES.enthalpies().of(formula("C2H5CHO"), State.LIQUID).isEmpty());
    }

    /** Every neutral substance of the other tables can be named. */
    @Test
    void theOtherTablesSpeakOfKnownSubstances() {
        TreeSet<String> unnamed = new TreeSet<>();
        Stream.of(TABLES.densities().all().stream().map(row -> row.solute()),
                        TABLES.strengths().stream().map(row -> row.solute()),
                        TABLES.gasSolubilities().stream().map(row -> row.formula()),
                        TABLES.virials().stream().map(row -> row.formula()),
                        TABLES.saltSolubilities().stream().flatMap(row -> Stream.of(row.formula(), row.solidPhase())),
                        TABLES.enthalpies().all().stream().map(row -> row.formula()))
                .flatMap(each -> each).filter(formula -> formula.charge() == 0 && TABLES.substances().of(formula).isEmpty())
                .forEach(formula -> unnamed.add(formula.plain()));
        assertEquals(new TreeSet<>(), unnamed);
    }

    /** The equations of school practice speak of substances that can be named. */
    @Test
    void speciesOfSchoolEquationsAreKnown() {
        TreeSet<String> unnamed = new TreeSet<>();
        for (Row row : Rows.read("/tarewright/reactions.csv")) {
            if (row.text("set").equals("school")) {
                Equation equation = Equation.parse(row.text("reactants") + " -> " + row.text("products")).value().orElseThrow();
                equation.terms().stream().map(term -> term.species().formula())
                        .filter(formula -> formula.charge() == 0 && TABLES.substances().of(formula).isEmpty())
                        .forEach(formula -> unnamed.add(formula.plain()));
            }
        }
        assertEquals(new TreeSet<>(), unnamed);
    }

    private static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }
}
