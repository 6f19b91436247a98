package tarewright.procedure.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Found;
import tarewright.procedure.resolve.ResolvedGraph.Point;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** The lines that the key draws on a graph of a titration and of a temperature against time. */
class TitrationCurveTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final String PAGE = """
            ---
            title: Curve
            ---

            ```apparatus
            burette: burette, 50 mL; graduation 0.1 mL; reads to 0.05 mL; one per group
            flask: conical flask, 250 mL; one per group
            ```

            ```reaction meeting
            %s
            ```

            ```solution sample
            solute: %s
            strength: %s
            volume: %s
            portions: 3
            in: flask
            found by students: yes
            label as: Sample A
            ```

            ```solution titrant
            solute: %s
            strength: 0.100 mol/L
            for: sample
            portions: 3
            measure with: burette
            ```

            ```reading titre
            of: volume of titrant
            read with: burette
            times: 3
            ```

            ```graph curve
            x: %s
            y: pH
            ```

            1. Titrate {label of sample} with {label of titrant}. {blank titre}
            """;
    private static final String ACETIC = "CH3COOH(aq) + NaOH(aq) -> NaCH3COO(aq) + H2O(l)";
    private static final String STRONG = "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)";

    private static Found<Resolved> read(String text) {
        return Resolver.resolve("test", Reader.read(new SourceText("test.md", text)).value(), Overrides.NONE, TABLES);
    }

    private static ResolvedGraph graph(String equation, String acid, String strength, String volume, String base, String x) {
        Found<Resolved> found = read(String.format(java.util.Locale.ROOT, PAGE, equation, acid, strength, volume, base, x));
        assertEquals(List.of(), found.findings());
        return found.value().graphs().get(0);
    }

    private static double at(ResolvedGraph graph, double volume) {
        return graph.line().stream().filter(p -> Math.abs(p.x() - volume) < 1e-9).mapToDouble(Point::y).findFirst().orElseThrow(() -> new AssertionError(volume + " is not on the line"));
    }

    @ParameterizedTest
    @DisplayName("25.0 mL of 0.100 mol/L hydrochloric acid with 0.100 mol/L sodium hydroxide, to the printed hundredth: OpenStax, Chemistry: Atoms First, Table 14.4")
    @CsvSource({"25.0, 7.00", "25.5, 11.00", "26.0, 11.29", "28.0, 11.75", "30.0, 11.96", "35.0, 12.22", "40.0, 12.36", "45.0, 12.46", "50.0, 12.52"})
    void strongAcid(double volume, double pH) {
        assertEquals(pH, at(graph(STRONG, "HCl", "0.100 mol/L", "25.0 mL", "NaOH", "volume of titrant"), volume), 0.0101);
    }

    @ParameterizedTest
    @DisplayName("the same with acetic acid: OpenStax, Chemistry: Atoms First, Table 14.4")
    @CsvSource({"25.0, 8.72", "25.5, 11.00", "26.0, 11.29", "28.0, 11.75", "30.0, 11.96", "50.0, 12.52"})
    void weakAcid(double volume, double pH) {
        assertEquals(pH, at(graph(ACETIC, "acetic acid", "0.100 mol/L", "25.0 mL", "NaOH", "titre"), volume), 0.0101);
    }

    @ParameterizedTest
    @DisplayName("100 mL of acetic acid: Whitten and others, General Chemistry, Table 19-6, which has Ka = 1.8e-5 where ours is 1.75e-5 (pKa 0.011 apart)")
    @CsvSource({"0, 2.89", "20, 4.14", "50, 4.74", "75, 5.22", "90, 5.70", "95, 6.02", "99, 6.74", "100, 8.72", "101, 10.70", "110, 11.68", "120, 11.96"})
    void buffered(double volume, double pH) {
        assertEquals(pH, at(graph(ACETIC, "acetic acid", "0.100 mol/L", "100 mL", "NaOH", "volume of titrant; 0 to 200 mL"), volume), 0.0171);
    }

    @Test
    @DisplayName("the axes go by the burette and by the usual scale of pH, whatever the strength that the students are to find")
    void axes() {
        for (String strength : List.of("0.100 mol/L", "0.020 mol/L")) {
            ResolvedGraph graph = graph(ACETIC, "acetic acid", strength, "25.0 mL", "NaOH", "volume of titrant");
            assertEquals(50, graph.x().scale().orElseThrow().to());
            assertEquals(0, graph.y().scale().orElseThrow().from());
            assertEquals(14, graph.y().scale().orElseThrow().to());
        }
    }

    @Test
    @DisplayName("the points of the key are the start, halfway (where pH = pKa of a weak acid) and the end, with what stands in the flask at each")
    void stages() {
        ResolvedGraph graph = graph(ACETIC, "acetic acid", "0.100 mol/L", "25.0 mL", "NaOH", "volume of titrant");
        assertEquals(List.of(0.0, 12.5, 25.0), graph.expected().stream().map(p -> Math.round(p.x() * 1e6) / 1e6).toList());
        assertEquals(4.756, graph.expected().get(1).y(), 0.002);
        ResolvedGraph.Curve curve = graph.curve().orElseThrow();
        assertEquals(List.of("CH3COOH", "NaOH"), curve.dissolved().stream().map(f -> f.plain()).toList());
        assertEquals(0.05, curve.stages().get(2).strengths().get(0), 1e-9);
        assertEquals(50.0, curve.stages().get(2).inAll(), 1e-9);
        assertEquals(List.of("acetic acid"), curve.constants().stream().map(c -> c.name()).toList());
    }

    @Test
    @DisplayName("an acid of three protons shows its constants, and the line only rises")
    void severalProtons() {
        ResolvedGraph graph = graph("C6H8O7(aq) + NaOH(aq) -> Na3C6H5O7(aq) + H2O(l)", "citric acid", "0.0350 mol/L", "20.0 mL", "NaOH", "volume of titrant");
        assertEquals(3, graph.curve().orElseThrow().constants().size());
        for (int i = 1; i < graph.line().size(); i++) {
            assertTrue(graph.line().get(i).y() >= graph.line().get(i - 1).y() && graph.line().get(i).x() > graph.line().get(i - 1).x());
        }
    }

    @Test
    @DisplayName("what does something unknown in water has no curve, and that is told")
    void unknown() {
        Found<Resolved> found = read(String.format(java.util.Locale.ROOT, PAGE, "CuSO4(aq) + NaOH(aq) -> Cu(OH)2(s) + Na2SO4(aq)", "CuSO4", "0.100 mol/L", "25.0 mL", "NaOH",
                "volume of titrant"));
        assertEquals(List.of("no-curve"), found.findings().stream().map(f -> f.id()).toList());
        assertTrue(found.value().graphs().get(0).line().isEmpty());
    }

    private static Found<Resolved> heat(String graph) {
        return read("""
                ---
                title: Warm
                room: 20 °C; 101.3 kPa
                ---

                ```apparatus
                cylinder: measuring cylinder, 50 mL; graduation 1 mL; one per group
                thermometer: thermometer; graduation 0.2 °C; one per group
                ```

                ```reaction meeting
                HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)
                ```

                ```solution acid
                solute: HCl
                strength: 1.00 mol/L
                volume: 50 mL
                in: cup
                measure with: cylinder
                ```

                ```solution alkali
                solute: NaOH
                strength: 1.00 mol/L
                volume: 50 mL
                in: cup
                measure with: cylinder
                ```

                ```reading start
                of: temperature of room
                read with: thermometer
                ```

                ```reading highest
                expect: start + temperature rise of meeting
                read with: thermometer
                ```

                ```graph record
                %s
                ```

                1. Mix {acid} and {alkali}. {blank start} {blank highest}
                """.replace("in: cup\n", "").formatted(graph));
    }

    @Test
    @DisplayName("a temperature stands level, jumps when two solutions are mixed and stands at the one without loss: 55.8 kJ/mol (CODATA, by hand) in 100 mL warm it by 6.7 K")
    void mixing() {
        Found<Resolved> found = heat("x: time; 0 to 10 min\ny: highest; 15 to 30 °C\nbefore: start\nmixed at: 3 min");
        assertEquals(List.of(), found.findings());
        ResolvedGraph graph = found.value().graphs().get(0);
        assertEquals(List.of(0.0, 3.0, 3.0, 10.0), graph.line().stream().map(p -> Math.round(p.x() * 1e9) / 1e9).toList());
        assertEquals(20.0, graph.line().get(0).y(), 0.01);
        // 0.050 mol × 55.8 kJ/mol / (100 g × 4.18 J/(g K)) = 6.67 K; densities and heat capacity of water.
        assertEquals(26.67, graph.line().get(2).y(), 0.15);
        assertEquals(graph.line().get(2).y(), graph.line().get(3).y(), 1e-12);
    }

    /** The excess over the start is 6.67 K (above); at 0.4 K/min at first, after t minutes there is 6.67 K × exp(−0.4 t/6.67) of it: Newton's law of cooling, by hand. */
    @Test
    @DisplayName("with a drift found on trial the line goes back from the highest in proportion to what is left of the rise: exp(-0.4 × 7 / 6.67) of it after 7 minutes")
    void drifting() {
        Found<Resolved> found = heat("x: time; 0 to 10 min\ny: highest; 15 to 30 °C\nbefore: start\nmixed at: 3 min\ndrift: 0.4 °C in 1 min");
        assertEquals(List.of(), found.findings());
        List<ResolvedGraph.Point> line = found.value().graphs().get(0).line();
        double rise = line.get(2).y() - 20;
        ResolvedGraph.Point last = line.get(line.size() - 1);
        assertEquals(10, last.x(), 1e-9);
        assertEquals(rise * Math.exp(-0.4 * 7 / rise), last.y() - 20, 1e-3);
        assertEquals(24.38, last.y(), 0.15);
        ResolvedGraph.Point next = line.get(3);
        assertEquals(0.4, (line.get(2).y() - next.y()) / (next.x() - 3), 0.01);
        List<ResolvedGraph.Point> other = heat("x: time; 0 to 10 min\ny: highest; 15 to 30 °C\nbefore: start\nmixed at: 3 min\ndrift: 0.8 K in 120 s")
                .value().graphs().get(0).line();
        assertEquals(last.y(), other.get(other.size() - 1).y(), 1e-9);
    }

    @Test
    @DisplayName("a drift that is no temperature in a time, is not above zero, or belongs to no mixing, is told")
    void driftTold() {
        String axes = "x: time; 0 to 10 min\ny: highest; 15 to 30 °C\n";
        String mixed = axes + "before: start\nmixed at: 3 min\n";
        assertEquals(List.of("bad-shape"), ids(mixed + "drift: 0.4 °C"));
        assertEquals(List.of("drift-kind"), ids(mixed + "drift: 0.4 mL in 1 min"));
        assertEquals(List.of("drift-kind"), ids(mixed + "drift: 0.4 °C in 1 g"));
        assertEquals(List.of("not-above-zero"), ids(mixed + "drift: -0.4 °C in 1 min"));
        assertEquals(List.of("field-missing"), ids(axes + "drift: 0.4 °C in 1 min"));
    }

    private static List<String> ids(String graph) {
        return heat(graph).findings().stream().map(f -> f.id()).toList();
    }

    @Test
    @DisplayName("a time of mixing that is off the axis or no time, and one field without the other, are told")
    void mixingTold() {
        assertEquals(List.of("mixed-off-axis"), heat("x: time; 0 to 10 min\ny: highest; 15 to 30 °C\nbefore: start\nmixed at: 30 min").findings().stream().map(f -> f.id()).toList());
        assertEquals(List.of("mixed-off-axis"), heat("x: time; 0 to 10 min\ny: highest; 15 to 30 °C\nbefore: start\nmixed at: 3 mL").findings().stream().map(f -> f.id()).toList());
        assertEquals(List.of("field-missing"), heat("x: time; 0 to 10 min\ny: highest; 15 to 30 °C\nmixed at: 3 min").findings().stream().map(f -> f.id()).toList());
    }
}
