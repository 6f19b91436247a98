package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class IncompatibleTest {
    private static final Incompatible INCOMPATIBLE = new Incompatible(Bench.RULES);

    private static Matter matter(String substance, String form, double percent) {
        return Matter.of(substance, Form.valueOf(form.toUpperCase(Locale.ROOT)), List.of(Part.of(substance,
                Content.percent(percent))));
    }

    @ParameterizedTest(name = "{0} {2} % with {3} {5} %")
    @CsvFileSource(resources = "/tarewright/safety/dangerous-pairs.csv", numLinesToSkip = 1)
    void dangerousPairsAreFound(String first, String firstForm, double firstPercent, String second, String secondForm,
            double secondPercent, String going, PairRule.Severity least, String gas, String source) {
        Set<PairRule.Setting> settings = new HashSet<>();
        if (going != null) {
            settings.add(PairRule.Setting.valueOf(going.replace('-', '_').toUpperCase(Locale.ROOT)));
        }
        Matter a = matter(first, firstForm, firstPercent);
        Matter b = matter(second, secondForm, secondPercent);

        List<Clash> clashes = INCOMPATIBLE.among(List.of(a, b), settings, List.of());

        assertFalse(clashes.isEmpty(), source);
        assertTrue(clashes.get(0).severity().compareTo(least) >= 0, () -> clashes.get(0).rule().id());
        if (gas != null) {
            assertTrue(clashes.stream().anyMatch(c -> c.rule().gas().filter(gas::equals).isPresent()),
                    () -> clashes.get(0).rule().id());
        }
        assertEquals(clashes.stream().map(c -> c.rule().id()).toList(),
                INCOMPATIBLE.among(List.of(b, a), settings, List.of()).stream().map(c -> c.rule().id()).toList(),
                "order of the two");
        assertTrue(INCOMPATIBLE.among(List.of(a, b), settings, List.of(new Together(second, first))).stream()
                .allMatch(c -> c.rule().setting() == PairRule.Setting.NEAR_FLAME), "of what is intended only what a flame does to it is told");
    }

    @ParameterizedTest(name = "{0} {2} % with {3} {5} %")
    @CsvFileSource(resources = "/tarewright/safety/harmless-pairs.csv", numLinesToSkip = 1)
    void everydayPairsRaiseNothing(String first, String firstForm, double firstPercent, String second, String secondForm,
            double secondPercent, String source) {
        List<Clash> clashes = INCOMPATIBLE.among(
                List.of(matter(first, firstForm, firstPercent), matter(second, secondForm, secondPercent)), Set.of(), List.of());

        assertEquals(List.of(), clashes.stream().map(c -> c.rule().id()).toList(), source);
        assertTrue(Bench.RULES.substances().find(Part.of(first, Content.pure()), Form.SOLID, 100).isPresent(), first);
        assertTrue(Bench.RULES.substances().find(Part.of(second, Content.pure()), Form.SOLID, 100).isPresent(), second);
    }

    /** A titration of acid with alkali and phenolphthalein in ethanol, all on one bench: common practice. */
    @Test
    void aWholeTitrationRaisesNothing() {
        Matter indicator = Matter.of("indicator", Form.SOLUTION,
                List.of(Part.of("phenolphthalein", Content.percent(1)), Part.of("ethanol", Content.percent(60))));

        assertEquals(List.of(), INCOMPATIBLE.among(List.of(matter("hydrochloric acid", "solution", 3.6),
                matter("sodium hydroxide", "solution", 4), indicator, matter("water", "liquid", 100)), Set.of(), List.of()));
    }

    /** A stock of concentrated acid beside five solutions is one thing to say, not five. */
    @Test
    void whatMustNotMeetWaterIsNamedOnce() {
        List<Clash> clashes = INCOMPATIBLE.among(List.of(matter("sulfuric acid", "solution", 96),
                matter("sodium chloride", "solution", 1), matter("copper(II) sulfate", "solution", 4), matter("water", "liquid",
                100)),
                Set.of(), List.of());

        assertEquals(List.of("sulfuric-strong-water"), clashes.stream().map(c -> c.rule().id()).toList());
        assertTrue(clashes.get(0).withWater());
    }

    @Test
    void whatIsOnlyGoodToKnowIsKeptApart() {
        List<Matter> matters = List.of(matter("calcium carbonate", "massive", 100), matter("hydrochloric acid", "solution", 7));

        assertEquals(List.of("acid-mineral-carbonate"),
                INCOMPATIBLE.all(matters, Set.of(), List.of()).stream().map(c -> c.rule().id()).toList());
    }

    @Test
    void twoPartsOfOneMatterClashToo() {
        Matter waste = Matter.of("waste", Form.SOLUTION,
                List.of(Part.of("HCl", Content.percent(2)), Part.of("NaOCl", Content.percent(1))));

        assertEquals("acid-mineral-hypochlorite", INCOMPATIBLE.among(List.of(waste), Set.of(), List.of()).get(0).rule().id());
    }

    /** EUH031 and H260 speak even for a substance of the teacher's own that no group names. */
    @Test
    void theClassificationSpeaksWhereNoGroupDoes() {
        SubstanceHazards sulfite = Bench.RULES.substances().byId("sodium-hydrogensulfite").orElseThrow();
        SubstanceHazards own = new SubstanceHazards("own", List.of("own salt"), List.of(), false, sulfite.state(), Set.of(),
                sulfite.molarMass(), 1, 0, 100, sulfite.dissolvedAs(), sulfite.classes(), "", List.of("EUH031"), sulfite.mAcute(),
                sulfite.mChronic(), sulfite.estimates(), List.of(), List.of(), Restriction.NONE, sulfite.listing());
        Rulebook rules = Bench.RULES.with(Bench.RULES.substances().with(List.of(own)));

        assertFalse(new Incompatible(rules).among(List.of(matter("own salt", "solid", 100), matter("HCl", "solution", 3)),
                Set.of(),
                List.of()).isEmpty());
    }

    @Test
    void everyMemberIsInTheTables() {
        for (ReactiveMember member : Bench.RULES.reactive().members()) {
            assertTrue(Bench.RULES.substances().byId(member.substance()).isPresent(), member.substance());
        }
    }
}
