package tarewright.print;

import static tarewright.print.Samples.arrow;
import static tarewright.print.Samples.blank;
import static tarewright.print.Samples.caution;
import static tarewright.print.Samples.chem;
import static tarewright.print.Samples.filled;
import static tarewright.print.Samples.h;
import static tarewright.print.Samples.p;
import static tarewright.print.Samples.q;
import static tarewright.print.Samples.sub;
import static tarewright.print.Samples.sup;
import static tarewright.print.Samples.t;
import static tarewright.print.Samples.w;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/**
 * An invented procedure, hydrogen from magnesium ribbon, as the documents would hold it, with every kind of piece and text in
 * use.
 */
final class SampleSheets {
    private SampleSheets() {
    }

    /** Four dots by two in RGB, without transparency. */
    static final String PHOTOGRAPH = "iVBORw0KGgoAAAANSUhEUgAAAAQAAAACCAIAAADwyuo0AAAAI0lEQVQI12P4z8Dw////BgcFBgYGFob//xkZGf7/v/+vvh4Aj/oLuostg/0AAAAASUVORK5CYII=";
    static final Text MG = chem("magnesium", w("Mg"));
    static final Text H2 = chem("hydrogen, H 2", w("H"), sub("2"));
    static final Text ACID = chem("hydrochloric acid, H Cl, aqueous", w("HCl(aq)"));
    static final Text EQUATION = chem(
            "magnesium solid plus 2 hydrochloric acid aqueous gives magnesium chloride aqueous plus hydrogen gas",
            w("Mg(s) + 2 HCl(aq) "), arrow("→"), w(" MgCl"), sub("2"), w("(aq) + H"), sub("2"), w("(g)"));
    static final Text CATALYSED = chem(
            "2 hydrogen peroxide aqueous gives, over manganese dioxide, 2 water liquid plus oxygen gas",
            w("2 H"), sub("2"), w("O"), sub("2"), w("(aq) "), new Text.Arrow("→", List.of(w("MnO"), sub("2"))),
            w(" 2 H"), sub("2"), w("O(l) + O"), sub("2"), w("(g)"));
    static final Text EQUILIBRIUM = chem("acetic acid is in equilibrium with acetate plus hydrogen ion",
            w("CH"), sub("3"), w("COOH "), arrow("⇌"), w(" CH"), sub("3"), w("COO"), sup("−"), w(" + H"), sup("+"));
    static final Text COMPLEX = chem("tetra ammine copper two plus", w("[Cu(NH"), sub("3"), w(")"), sub("4"), w("]"), sup("2+"));

    static Sheet sheet(Sheet.Kind kind, String kindName, Sheet.Paper paper, List<Piece> pieces) {
        return new Sheet(kind, "Hydrogen from magnesium ribbon", kindName, "H1", "v7k2", "en", paper,
                "Fennick Quay Evening College",
                new Sheet.PageWords("page", "of"), pieces);
    }

    static Sheet handout(Sheet.Paper paper) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.FormLine(List.of(new Piece.FormField("Name", 5), new Piece.FormField("Group", 2),
                new Piece.FormField("Date", 3))));
        pieces.add(h(2, "What this is for"));
        pieces.add(new Piece.Bullets(List.of(
                List.of(p(t("Measure how much gas a known mass of metal gives."))),
                List.of(p(w("Find the molar volume of "), H2, w(" and compare it with the expected one."))))));
        pieces.add(new Piece.Display(List.of(EQUATION)));
        pieces.add(h(2, "Safety"));
        pieces.add(new Piece.Signs(List.of(new Piece.Sign("M004", "Wear splash goggles from the first step to the last."),
                new Piece.Sign("P003", "No open flame: hydrogen is made."), new Piece.Sign("M011",
                        "Wash your hands at the end."))));
        pieces.add(hazard("Hydrochloric acid", "1.0 mol/L", List.of(), "", List.of(
                "At this strength no hazard class applies by EU CLP; it still stings in the eye."), "EU CLP, harmonised limits",
                        true));
        pieces.add(hazard("Hydrogen", "made here: 80 mL in each group", List.of("GHS02"), "Danger",
                List.of("H220 Extremely flammable gas."), "EU CLP, Annex VI", true));
        pieces.add(h(2, "What you need"));
        pieces.add(new Piece.Table(List.of(w("For one group of 2")), List.of(List.of(w("item")), List.of(w("amount"))), List.of(
                List.of(List.of(w("magnesium ribbon, 1.10 g/m")), List.of(q("72 mm"), w(", about "), q("0.079 g"))),
                List.of(List.of(w("hydrochloric acid, 1.0 mol/L")), List.of(q("10.0 mL"))),
                List.of(List.of(w("gas syringe, 100 mL, with flask and stopper")), List.of(w("1"))),
                List.of(List.of(w("measuring cylinder, 25 mL")), List.of(w("1")))), List.of(false, true), false, Piece.Use.READ));
        pieces.add(h(2, "What to do"));
        pieces.add(steps());
        pieces.add(h(2, "Readings"));
        pieces.add(readings(blank(9, "mass of ribbon in grams"), blank(9, "volume of gas in millilitres"), blank(9,
                "room temperature")));
        pieces.add(graph());
        pieces.add(h(2, "Questions"));
        pieces.add(new Piece.Question("1", "2 marks", List.of(p(t("How many moles of magnesium did you use?"))),
                List.of(new Piece.RuledLines(2, "space for the answer to question 1")), List.of()));
        pieces.add(new Piece.Question("2", "1 mark", List.of(p(t("Why did the volume of acid not have to be exact?"))),
                List.of(new Piece.RuledLines(2, "space for the answer to question 2")), List.of()));
        pieces.add(new Piece.Question("3", "", List.of(p(t("The gas was collected over water."))), List.of(), List.of(
                new Piece.Question("3 a", "1 mark", List.of(p(t("Which other gas is in the syringe?"))),
                        List.of(new Piece.Choices(
                        List.of(t("water vapour"), t("oxygen"), List.of(w("hydrogen chloride, "), chem("H Cl", w("HCl")))),
                                Optional.empty())), List.of()),
                new Piece.Question("3 b", "1 mark", List.of(p(t("Does it make the reading larger or smaller?"))),
                        List.of(new Piece.RuledLines(1, "space for the answer to question 3 b")), List.of()))));
        return sheet(Sheet.Kind.HANDOUT, "Handout", paper, pieces);
    }

    private static Piece steps() {
        return new Piece.Steps(1, List.of(
                List.of(p(w("Put on your "), new Text.Strong(List.of(w("splash goggles"))), w("."))),
                List.of(p(w("Cut "), q("72 mm"), w(" of ribbon, about "), q("0.079 g"), w(", and weigh it: "), blank(9,
                        "mass of ribbon in grams"), w(" g."))),
                List.of(caution("CAUTION", 2, "The acid stings in the eye and on broken skin.", "A splash reddens the eye.",
                                "Keep your goggles on, and rinse a splash at once for ten minutes."),
                        p(w("Measure "), q("10.0 mL"), w(" of "), ACID, w(" into the flask with the measuring cylinder."))),
                List.of(caution("WARNING", 1, "Hydrogen and air explode at a flame.", "The flask bursts and throws glass.",
                                "Keep every flame off the bench until the syringes are emptied in the hood."),
                        p(w("Drop in the ribbon and close the stopper at once.")),
                        new Piece.Bullets(List.of(List.of(p(t("One of you holds the plunger.")))))),
                List.of(p(w("Wait until the ribbon has gone, then read the syringe: "), blank(9, "volume of gas in millilitres"),
                        w(" mL."))),
                List.of(caution("NOTICE", 3, "The plunger sticks when it is wet.", "The reading comes out too small.",
                        "Turn the plunger once before you read."),
                        p(w("Empty the flask into the tray "), new Text.Code("dilute acid"), w("."))),
                List.of(p(w("Read the thermometer and the barometer on the wall.")))));
    }

    static Piece readings(Text mass, Text volume, Text temperature) {
        return new Piece.Table(List.of(), List.of(t("run"), t("mass of ribbon / g"), t("volume of gas / mL"),
                t("room temperature / °C")), List.of(
                List.of(t("1"), List.of(mass), List.of(volume), List.of(temperature)),
                List.of(t("2"), List.of(mass), List.of(volume), List.of(temperature))), List.of(false, true, true, true), true,
                        Piece.Use.FILL);
    }

    static Piece hazard(String name, String detail, List<String> pictograms, String signal, List<String> statements, String basis,
            boolean known) {
        return new Piece.Hazard(t(name), t(detail), pictograms, signal, statements, basis, known);
    }

    static Piece graph() {
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-1 -1 142 62\">");
        for (int i = 0; i <= 28; i++) {
            svg.append("<line x1=\"").append(i * 5).append("\" y1=\"0\" x2=\"").append(i * 5)
                    .append("\" y2=\"60\" stroke=\"#888888\" stroke-width=\"0.15\"/>");
        }
        for (int i = 0; i <= 12; i++) {
            svg.append("<line x1=\"0\" y1=\"").append(i * 5).append("\" x2=\"140\" y2=\"").append(i * 5)
                    .append("\" stroke=\"#888888\" stroke-width=\"0.15\"/>");
        }
        svg.append("<path d=\"M0 0 V60 H140\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.6\"/></svg>");
        return new Piece.Together(List.of(new Piece.Heading(3, t("Graph")), new Piece.Drawing(svg.toString(),
                "empty axes: mass of ribbon across, volume of gas up", 142, 62)));
    }

    static Sheet key(Sheet.Paper paper) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.Note("For the marker", List.of(p(t("The magnesium limits. The acid is 1.5 times what it needs.")),
                p(t("A student's own reading comes first: follow it through.")))));
        pieces.add(h(2, "Readings"));
        pieces.add(readings(filled("0.077 to 0.081"), filled("76 to 84"), filled("19 to 21")));
        pieces.add(h(2, "Working"));
        pieces.add(new Piece.Display(List.of(EQUATION)));
        pieces.add(new Piece.Working(List.of(
                new Piece.WorkedLine(List.of(new Text.Symbol("n"), w("("), MG, w(")")), List.of(w("= "),
                        new Text.Fraction(List.of(new Text.Symbol("m")),
                        List.of(new Text.Symbol("M"))), w(" = "), new Text.Fraction(List.of(w("0.079 "), new Text.Struck(t("g"))),
                        List.of(w("24.305 "), new Text.Struck(t("g")), w("/mol"))), w(" = 3.25 mmol")), ""),
                new Piece.WorkedLine(List.of(new Text.Symbol("n"), w("("), H2, w(")")), List.of(w("= "), new Text.Symbol("n"),
                        w("("), MG, w(") × 1/1 = 3.25 mmol")), "ratio of the coefficients"),
                new Piece.WorkedLine(List.of(new Text.Symbol("V"), w("("), H2, w(", moist)")), List.of(w("= "), new Text.Fraction(
                        List.of(new Text.Symbol("n"), w("·"), new Text.Symbol("R"), w("·"), new Text.Symbol("T")),
                        List.of(new Text.Symbol("p"), w(" − "), new Text.Symbol("p"), sub("w"))),
                        w(" = "), new Text.Fraction(t("3.25 mmol × 8.314 kPa L/(mol K) × 293.15 K"), t("101.3 kPa − 2.3 kPa")),
                                w(" = 80.0 mL")), "rounded to the syringe's 1 mL"))));
        pieces.add(h(2, "Answers"));
        pieces.add(new Piece.Question("1", "2 marks", List.of(p(t("How many moles of magnesium did you use?"))),
                List.of(p(filled("3.25 mmol"), w(" accept 3.1 to 3.4 mmol"))), List.of()));
        pieces.add(new Piece.Question("3 a", "1 mark", List.of(p(t("Which other gas is in the syringe?"))),
                List.of(new Piece.Choices(
                List.of(t("water vapour"), t("oxygen"), t("hydrogen chloride")), Optional.of(0))), List.of()));
        pieces.add(new Piece.Table(t("Wrong answers and the slip behind them"), List.of(t("answer"), t("slip")), List.of(
                List.of(t("73.9 mL"), t("22.4 L/mol used")), List.of(t("5.9 mL"), t("°C put into the gas law"))), List.of(true,
                        false), false, Piece.Use.READ));
        pieces.add(h(3, "Other equations"));
        pieces.add(new Piece.Display(List.of(CATALYSED)));
        pieces.add(new Piece.Display(List.of(EQUILIBRIUM)));
        pieces.add(p(w("The deep blue ion is "), COMPLEX, w("."), new Text.Break(), w("It is "), new Text.Emphasis(t("not")),
                w(" made here.")));
        pieces.add(new Piece.NewPage());
        pieces.add(h(2, "Notes"));
        pieces.add(new Piece.RuledLines(3, "space for notes"));
        pieces.add(new Piece.Graph(new Piece.Axis("mass of ribbon / g", List.of("0", "0.02", "0.04", "0.06"), 4),
                new Piece.Axis("volume of gas / mL", List.of("0", "20", "40", "60", "80"), 4), List.of(new Piece.Spot(0.5, 0.4)),
                List.of(new Piece.Spot(0, 0), new Piece.Spot(1, 0.8)),
                "Axes to plot on: mass of ribbon / g along, volume of gas / mL up. Expected: 0.03 along and 32 up."));
        pieces.add(new Piece.Photograph(PHOTOGRAPH, "two dishes, the left one with a spoonful of a dark powder", 40, 20));
        pieces.add(new Piece.NextSheet());
        pieces.add(p(w("For groups 2, 4, 6.")));
        pieces.add(new Piece.Leaf("Handout, filled in", "H1", new Piece.Heading(2, t("Hydrogen from magnesium ribbon")), List.of(h(2, "Questions"),
                new Piece.Question("1", "2 marks", List.of(p(t("How many moles of magnesium did you use?"))),
                        List.of(new Piece.Written(2, List.of(filled("3.25 mmol"), w(" Accept 3.1 to 3.4 mmol.")))), List.of()))));
        return sheet(Sheet.Kind.KEY, "Key", paper, pieces);
    }

    static Sheet safety(Sheet.Paper paper) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.Wall("Danger", List.of(new Piece.WallMark("GHS02", "Hydrogen"), new Piece.WallMark("GHS05", "Hydrochloric acid, concentrated")),
                List.of(new Piece.Sign("M004", "Splash goggles"), new Piece.Sign("M009", "Gloves"), new Piece.Sign("P003", "No flame"))));
        pieces.add(new Piece.NewPage());
        pieces.add(h(2, "On the bench"));
        pieces.add(hazard("Hydrogen", "made here, 80 mL in each group", List.of("GHS02"), "Danger",
                List.of("H220 Extremely flammable gas."), "EU CLP, Annex VI", true));
        pieces.add(hazard("Hydrochloric acid", "concentrated, 37 %, in the prep room only", List.of("GHS05", "GHS07"), "Danger",
                List.of(
                "H290 May be corrosive to metals.", "H314 Causes severe skin burns and eye damage.",
                        "H335 May cause respiratory irritation."), "EU CLP, specific limits", true));
        pieces.add(hazard("Residue in the flask", "", List.of(), "", List.of("Treat as hazardous: no data on this mixture."),
                "not in the table of substances", false));
        pieces.add(h(2, "What to wear and do"));
        pieces.add(new Piece.Signs(List.of(new Piece.Sign("M004", "Splash goggles, from the first step to the last"),
                new Piece.Sign("M009", "Gloves for the concentrated acid"),
                new Piece.Sign("M010", "Coat or overall, closed"), new Piece.Sign("P003", "No open flame"), new Piece.Sign("P022",
                        "No eating or drinking"), new Piece.Sign("M011", "Wash your hands at the end"))));
        pieces.add(h(2, "If something goes wrong"));
        pieces.add(new Piece.Signs(List.of(new Piece.Sign("E011", "Acid in the eye: rinse for ten minutes, call the teacher"),
                new Piece.Sign("F001", "Magnesium on fire: dry sand, never water or carbon dioxide"))));
        pieces.add(new Piece.Paragraph(t("Local rules come first. The teacher remains responsible.")));
        return sheet(Sheet.Kind.SAFETY, "Safety panel", paper, pieces);
    }

    static Sheet prep(Sheet.Paper paper) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(h(2, "Totals for 14 groups and 10 % spare"));
        pieces.add(new Piece.Table(List.of(), List.of(t("item"), t("for a group"), t("for the class"), t("done")), List.of(
                List.of(t("magnesium ribbon, 1.10 g/m"), t("72 mm"), t("1.11 m"), List.of(blank(4, "done"))),
                List.of(t("hydrochloric acid, 1.0 mol/L"), t("10.0 mL"), t("154 mL; make 200 mL"), List.of(blank(4, "done")))),
                List.of(false, true, true, false), false, Piece.Use.READ));
        pieces.add(h(2, "Make up: hydrochloric acid, 1.0 mol/L, 200 mL"));
        pieces.add(new Piece.Steps(1, List.of(
                List.of(caution("DANGER", 0, "The concentrated acid burns skin and eyes.", "Its vapour attacks the airways.",
                        "Work in the hood, with goggles and gloves; pour acid into water."),
                        p(w("Measure "), q("150 mL"), w(" of water into the beaker."))),
                List.of(p(w("Add "), q("16.7 mL"), w(" of concentrated acid, stirring."))),
                List.of(p(w("Make up to "), q("200 mL"), w(" and label."))))));
        pieces.add(h(2, "Waste"));
        pieces.add(p(t("About 140 mL of dilute acid, into the tray for dilute acid waste.")));
        return sheet(Sheet.Kind.PREP, "Prep sheet", paper, pieces);
    }

    static Sheet labels(Sheet.Paper paper) {
        List<Piece.Label> labels = new ArrayList<>();
        labels.add(label("Hydrochloric acid", "1.0 mol/L", List.of(), "", List.of("No hazard class at this strength by EU CLP."),
                true));
        labels.add(label("Hydrochloric acid, concentrated", "37 % w/w", List.of("GHS05", "GHS07"), "Danger",
                List.of("H290 May be corrosive to metals.",
                "H314 Causes severe skin burns and eye damage.", "H335 May cause respiratory irritation."), true));
        labels.add(label("Residue", "", List.of(), "", List.of("Hazards not known: treat as hazardous."), false));
        labels.add(label("Copper(II) sulfate solution", "0.50 mol/L", List.of("GHS05", "GHS07", "GHS09"), "Danger",
                List.of("H302 Harmful if swallowed.",
                "H318 Causes serious eye damage.", "H410 Very toxic to aquatic life with long lasting effects."), true));
        for (int i = 0; i < 6; i++) {
            labels.add(label("Magnesium ribbon", "clean, 1.10 g/m", List.of("GHS02"), "Danger", List.of("H228 Flammable solid."),
                    true));
        }
        return sheet(Sheet.Kind.LABELS, "Labels", paper, List.of(new Piece.Labels(new Piece.LabelGrid(2, 4, 13, 6), labels)));
    }

    private static Piece.Label label(String name, String detail, List<String> pictograms, String signal, List<String> statements,
            boolean known) {
        return new Piece.Label(t(name), t(detail), pictograms, signal, statements,
                List.of("2041-02-03  H1 v7k2  Fennick Quay Evening College"), known);
    }

    static List<Sheet> all(Sheet.Paper paper) {
        return List.of(handout(paper), key(paper), safety(paper), prep(paper), labels(paper));
    }
}
