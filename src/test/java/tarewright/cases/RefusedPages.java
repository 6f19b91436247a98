package tarewright.cases;

import java.util.Optional;

/** Writes an input that must be refused as a teacher would come to type it. */
final class RefusedPages {
    private RefusedPages() {
    }

    /** A procedure, and the line of it that is at fault. */
    record Written(Page page, String line) {
        /** The number of the line, from 1. */
        int lineNumber() {
            String[] lines = page.markdown().split("\n", -1);
            for (int i = 0; i < lines.length; i++) {
                if (lines[i].equals(line)) {
                    return i + 1;
                }
            }
            throw new AssertionError("no line " + line);
        }
    }

    /** Empty where it has no place in a procedure. */
    static Optional<Written> of(Case row) {
        Page page = new Page("Case " + row.id()).wasted();
        return switch (row.topic()) {
            case "balancing" -> Optional.of(new Written(page.block("reaction course", row.get("skeleton")), row.get("skeleton")));
            case "formula" -> Optional.of(new Written(page.block("solid sample", "substance: " + row.get("formula"),
                    "mass: 1.0 g"),
                    "substance: " + row.get("formula")));
            case "vapour_pressure" -> {
                String at = "at: " + row.get("temperature") + "; 101.3 kPa";
                yield Optional.of(new Written(page.block("gas sample", "substance: N2", "volume: 50 mL", "collected: over water",
                        at), at));
            }
            case "dilution" -> Optional.of(new Written(page.block("solution stock", "solute: NaCl", "strength: " + row.get("C1"))
                    .block("solution weaker", "made from: stock", "strength: " + row.get("C2"), "made up to: " + row.get("V2")),
                    "strength: " + row.get("C2")));
            case "solution" -> {
                String strength = "strength: " + row.get("mass_percent") + " w/w";
                yield Optional.of(new Written(page.block("solution lye", "solute: " + row.get("solute"), strength,
                        "density: 1.5 g/mL", "volume: 33 mL"),
                        strength));
            }
            case "composition" -> Optional.empty();
            default -> Optional.of(row.get("equation").startsWith("Zn(s)") ? zinc(row, page) : equation(row, page));
        };
    }

    private static Written equation(Case row, Page page) {
        page.block("reaction course", row.get("equation"));
        boolean balanced = row.id().equals("bad-053");
        if (balanced) {
            page.block("solution base", "solute: NaOH", "strength: 0.10 mol/L", "moles: " + row.get("amount_NaOH"))
                    .block("liquid acid", "substance: HCl", "for: base").text("Take {volume of acid}.");
            return new Written(page, "```liquid acid");
        }
        return new Written(page.block("solid sample", "substance: NaCl", "mass: 1.0 g"), row.get("equation"));
    }

    /** Zinc in an excess of acid gives hydrogen. */
    private static Written zinc(Case row, Page page) {
        String room = row.has("temperature") ? "room: " + row.get("temperature") + "; " + row.get("pressure") : "";
        if (!room.isEmpty()) {
            page.front(room);
        }
        String yield = row.has("yield") ? "goes to: " + row.get("yield") : "";
        String purity = row.has("purity_Zn") ? "purity: " + row.get("purity_Zn") : "";
        String amount = row.has("mass_Zn") ? "mass: " + row.get("mass_Zn") : row.has("mass_H2") ? "for: made" : "";
        page.block("reaction course", row.get("equation"), yield);
        page.block("solid zinc", "substance: Zn", amount, purity);
        page.block("solution acid", "solute: HCl", "strength: 2.0 mol/L", "excess over: zinc", "at least: 2 times");
        String made = row.find().equals("mass of O2") ? "O2" : "H2";
        page.block("gas made", "substance: " + made, row.has("mass_H2") ? "mass: " + row.get("mass_H2") : "made by: course");
        if (row.has("mass_H2")) {
            return new Written(page, yield);
        }
        String asks = "The volume is {volume of zinc}.";
        return switch (row.find()) {
            case "volume of Zn" -> new Written(page.text(asks), asks);
            case "mass of O2" -> new Written(page, "substance: O2");
            case "mass of H2" -> new Written(page, purity.isEmpty() ? "```solid zinc" : purity);
            default -> new Written(page, row.kind().contains("unit") ? amount : room);
        };
    }
}
