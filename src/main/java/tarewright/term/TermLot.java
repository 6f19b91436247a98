package tarewright.term;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tarewright.document.VersionCode;
import tarewright.print.PdfPrinter;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.prepare.Need;

/**
 * What is printed for a whole term: its prep sheet and its order list, which share a version code and are replaced together.
 *
 * @param name of the term's file, which the documents' names start with
 * @param title what they are headed by
 * @param needs each procedure of each section, without errors; at least one
 * @param footer words for the footer; may be empty
 * @param inputs SHA-256 in hexadecimal of each text that went into it, by name
 * @param facts what both say
 * @param version the short code on their pages
 */
public record TermLot(String name, String title, List<Need> needs, String footer, SortedMap<String, String> inputs, List<Fact> facts, String version) {
    public TermLot {
        needs = List.copyOf(needs);
        inputs = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(inputs));
        facts = List.copyOf(facts);
        if (needs.isEmpty()) {
            throw new IllegalArgumentException("a term for nobody");
        }
    }

    /** @param stocks of the term */
    public static TermLot of(String name, String title, List<Need> needs, List<StockBlock> stocks, String footer, Program program) {
        SortedMap<String, String> inputs = new TreeMap<>();
        stocks.forEach(s -> inputs.put("stock/" + s.name(), Hash.of(s.block().span().text())));
        needs.forEach(n -> inputs.put(n.procedure().name(), Hash.of(n.procedure().procedure().source().text().content())));
        List<Fact> facts = TermFacts.of(needs);
        String classes = needs.stream().map(n -> n.section() + " " + n.procedure().name() + " "
                + VersionCode.of(n.procedure().procedure().source().text().content(), n.procedure().setting(), "")).collect(Collectors.joining("\n"));
        String data = String.join("\u0000", program.data(), title, footer, inputs.toString(), classes, facts.stream().map(Fact::onPaper).collect(Collectors.joining("\n")));
        return new TermLot(name, title, needs, footer, inputs, facts, VersionCode.of("", needs.get(0).procedure().setting(), data));
    }

    /** Both laid out whole; nothing is written. */
    public List<LotDocument> print(PdfPrinter printer) {
        return List.of(new TermPrep(name, title, needs, version, footer).print(printer), new OrderList(name, needs, version, footer).print(printer));
    }

    LotRecord record(String build, Map<String, LotRecord.FileRecord> files) {
        return LotRecord.ofTerm(this, build, files);
    }
}
