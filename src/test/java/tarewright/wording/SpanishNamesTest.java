package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Element;
import tarewright.chemistry.Equation;
import tarewright.chemistry.EquationResult;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Substance;
import tarewright.chemistry.SubstanceNames;
import tarewright.chemistry.Substances;
import tarewright.safety.SubstanceHazards;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.tables.Translations;

/** A Spanish sheet calls every substance by its Spanish name, and a name typed in Spanish is the same substance with the same hazards. */
class SpanishNamesTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final Translations SPANISH = Translations.into("es");

    /** What the program may name itself: substances, rows of the hazard table, strengths as sold, elements. */
    private static Set<String> named() {
        return Stream.of(TABLES.substances().all().stream().map(Substance::name),
                HazardTables.standard().substances().rows().stream().map(SubstanceHazards::name),
                TABLES.strengths().stream().map(CommercialStrength::name),
                TABLES.elements().all().stream().map(Element::name)).flatMap(s -> s).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everySubstanceHasASpanishName() {
        List<String> lacking = named().stream().filter(n -> SPANISH.name(n).isEmpty()).toList();
        assertEquals(List.of(), lacking);
    }

    /** Were two substances to share a Spanish name, what is typed would be one of them by chance. */
    @Test
    void noSpanishNameIsThatOfTwoSubstances() {
        Map<String, String> owner = new HashMap<>();
        TABLES.substances().all().forEach(s -> Stream.concat(Stream.of(s.name()), s.synonyms().stream()).forEach(n -> owner.put(SubstanceNames.key(n), s.id())));
        for (Substance s : TABLES.substances().all()) {
            String key = SubstanceNames.key(SPANISH.name(s.name()).orElseThrow().text());
            assertEquals(s.id(), owner.getOrDefault(key, s.id()), key);
            owner.put(key, s.id());
        }
    }

    /** The English key decides what is found, so a Spanish procedure has the hazards of the English one. */
    @Test
    void aNameTypedInSpanishIsTheSameSubstance() {
        Substances spanish = TABLES.in("es-MX").substances();
        for (Substance s : TABLES.substances().all()) {
            Substance typed = spanish.named(SPANISH.name(s.name()).orElseThrow().text()).orElseThrow();
            assertEquals(s.id(), typed.id());
            assertEquals(s.name(), typed.name());
            assertEquals(s.density(), typed.density());
        }
        assertFalse(TABLES.in("en").substances().named("ácido sulfúrico").isPresent());
    }

    /**
     * Formulas with the names of two published lists for secondary schools, read in public repositories: a table of compounds in Stock's nomenclature
     * (Quimia, nomenclatura.ts) and a list of formulas with names (QUIM_NOMBRES).
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/tarewright/words/spanish-names.csv", numLinesToSkip = 1)
    void namesAreThoseOfPublishedLists(String formula, String name) {
        Formula parsed = Formula.parse(formula).value().orElseThrow();
        List<String> ours = TABLES.substances().of(parsed).stream().map(s -> SPANISH.name(s.name()).orElseThrow().text()).toList();
        assertTrue(ours.contains(name), formula + ": " + ours);
    }

    /** The screen reader says the Spanish name too. */
    @Test
    void anEquationIsSpokenInSpanish() {
        Spoken spoken = new Spoken(TABLES.substances(), TABLES.elements(), DocumentWords.in("es"), TableWords.in("es"));
        Equation equation = ((EquationResult.Ok) Equation.parse("CaCO3(s) + 2 HCl(aq) -> CaCl2(aq) + H2O(l) + CO2(g)")).equation();
        assertEquals("carbonato de calcio, sólido", spoken.species(equation.left().get(0).species()));
        assertEquals("hierro 3 más", spoken.formula(Formula.parse("Fe^3+").value().orElseThrow()));
    }

    /** A teacher's own substance has no Spanish name of ours: it is printed as she has it, and the panel says so. */
    @Test
    void aNameThatIsNotInTheListStaysAndIsToldOf() {
        TableWords words = TableWords.in("es");
        assertEquals("unobtainium", words.name("unobtainium"));
        assertTrue(words.lacks("unobtainium"));
        assertFalse(TableWords.in("en").lacks("unobtainium"));
        assertFalse(words.lacks("sulfuric acid"));
        assertEquals(Optional.of(true), SPANISH.name("zinc acetate dihydrate").map(t -> words.isUnproven("zinc acetate dihydrate")));
    }
}
