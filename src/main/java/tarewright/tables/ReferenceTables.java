package tarewright.tables;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.AcidConstants;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Composition;
import tarewright.chemistry.Densities;
import tarewright.chemistry.DilutionHeat;
import tarewright.chemistry.Elements;
import tarewright.chemistry.FlammableLimits;
import tarewright.chemistry.FormationEnthalpies;
import tarewright.chemistry.Formula;
import tarewright.chemistry.GasSolubility;
import tarewright.chemistry.SaltSolubility;
import tarewright.chemistry.Substance;
import tarewright.chemistry.Substances;
import tarewright.chemistry.Virial;
import tarewright.finding.Found;
import tarewright.text.SourceText;

/**
 * All chemical data of the product.
 *
 * @param elements atomic weights
 * @param substances names, formulas, densities
 * @param densities of solutions
 * @param strengths as sold
 * @param gasSolubilities Henry's law constants
 * @param virials second virial coefficients
 * @param flammableLimits of gases in air
 * @param enthalpies of formation
 * @param saltSolubilities in water
 * @param dilutionHeats of acids
 * @param acidConstants pKa of acids, of the acids of bases, of indicators
 * @param practice how a preparation room usually works
 */
public record ReferenceTables(Elements elements, Substances substances, Densities densities, List<CommercialStrength> strengths,
        List<GasSolubility> gasSolubilities, List<Virial> virials, List<FlammableLimits> flammableLimits,
        FormationEnthalpies enthalpies, List<SaltSolubility> saltSolubilities, List<DilutionHeat> dilutionHeats, AcidConstants acidConstants,
        Practice practice) {
    public ReferenceTables {
        strengths = List.copyOf(strengths);
        gasSolubilities = List.copyOf(gasSolubilities);
        virials = List.copyOf(virials);
        flammableLimits = List.copyOf(flammableLimits);
        saltSolubilities = List.copyOf(saltSolubilities);
        dilutionHeats = List.copyOf(dilutionHeats);
    }

    /** The solutions of a solute that are sold, in the order of the table. */
    public List<CommercialStrength> strengthsOf(Formula solute) {
        return strengths.stream().filter(row -> row.solute().sameComposition(solute)).toList();
    }

    /** Henry's law constant of a gas. */
    public Optional<GasSolubility> gasSolubility(Formula gas) {
        return gasSolubilities.stream().filter(row -> row.formula().sameComposition(gas)).findFirst();
    }

    /** Second virial coefficient of a gas. */
    public Optional<Virial> virial(Formula gas) {
        return virials.stream().filter(row -> row.formula().sameComposition(gas)).findFirst();
    }

    /** Limits within which a gas burns in air; empty for a gas that does not burn, or that is not in the table. */
    public Optional<FlammableLimits> flammableLimits(Formula gas) {
        return flammableLimits.stream().filter(row -> row.formula().sameComposition(gas)).findFirst();
    }

    /** Solubility of a solid, by its anhydrous formula. */
    public Optional<SaltSolubility> saltSolubility(Formula anhydrous) {
        return saltSolubilities.stream().filter(row -> row.formula().sameComposition(anhydrous)).findFirst();
    }

    /** Heat of diluting a solution of this. */
    public Optional<DilutionHeat> dilutionHeat(Formula solute) {
        return dilutionHeats.stream().filter(row -> row.formula().sameComposition(solute)).findFirst();
    }

    /** Every row that is from memory: unproven, and to be marked where it is printed. */
    public List<Unproven> unproven() {
        return Unproven.in(this);
    }

    /**
     * These for a procedure in a language: its names of substances can be typed beside the English ones. What is found, and every datum of it,
     * is the same in every language.
     *
     * @param language BCP 47
     */
    public ReferenceTables in(String language) {
        if (!Translations.known(language)) {
            return this;
        }
        Translations translations = Translations.into(language);
        List<Substance> named = substances.all().stream().map(s -> translations.name(s.name()).map(t -> s.alsoCalled(t.text())).orElse(s)).toList();
        return new ReferenceTables(elements, new Substances(named), densities, strengths, gasSolubilities, virials, flammableLimits, enthalpies,
                saltSolubilities, dilutionHeats, acidConstants, practice);
    }

    /** These with the names of every language that we have. */
    public ReferenceTables inEveryLanguage() {
        ReferenceTables all = this;
        for (String language : Translations.languages()) {
            all = all.in(language);
        }
        return all;
    }

    /**
     * These with a teacher's own table of substances over ours: a row with a name that is known here replaces what it fills in,
     * any other row adds a substance.
     *
     * @param csvText a first line with names of columns, {@code name} among them, then a row for each substance; at most
     *        1 MiB and 5,000 rows
     * @param fileName for messages, and as the source of rows that give none
     */
    public Found<ReferenceTables> withOwn(String csvText, String fileName) {
        Found<Substances> laid = OwnSubstances.over(substances, new SourceText(fileName, csvText));
        Set<Composition> isomers = laid.value().isomers();
        return new Found<>(new ReferenceTables(elements, laid.value(), new Densities(densities.all(), isomers), strengths,
                gasSolubilities, virials, flammableLimits, new FormationEnthalpies(enthalpies.all(), isomers), saltSolubilities, dilutionHeats,
                new AcidConstants(acidConstants.all(), isomers), practice), laid.findings());
    }
}
