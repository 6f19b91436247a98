package tarewright.command;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;
import tarewright.text.Span;

/** Tells where a country has no hazard table of its own here. */
final class CountryCheck {
    private CountryCheck() {
    }

    static List<Finding> of(Resolved procedure, CountryRules rules) {
        String country = procedure.setting().country();
        if (rules.own() || country.isBlank()) {
            return List.of();
        }
        Optional<Span> written = procedure.procedure().front().country().filter(c -> c.value().equals(country)).map(c -> c.at());
        return List.of(new CountryNotKnown(country, rules.rules().ruleSet().title(),
                HazardTables.ruleSets().stream().flatMap(s -> s.countries().stream()).distinct().sorted().toList(),
                written.orElseGet(() -> procedure.procedure().source().text().span(0, 0))));
    }

    /** No hazard table for this country: another one was used. @param title of the one that was @param known codes of countries that have one */
    record CountryNotKnown(String country, String title, List<String> known, Span at) implements Finding {
        CountryNotKnown {
            known = List.copyOf(known);
        }

        @Override
        public String id() {
            return "country-not-known";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }
}
