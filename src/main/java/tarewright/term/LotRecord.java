package tarewright.term;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A page of the manifest: what a print left of one lot. Each lot has a file of its own, so that shares of a print that were made
 * on several machines merge by copying.
 *
 * @param format 2
 * @param procedure its name
 * @param section below the output folder; empty for none
 * @param version the code on its pages
 * @param build of the program that printed it: another build may lay the same out otherwise
 * @param inputs SHA-256 in hexadecimal of each text that went into it
 * @param figures what it says
 * @param kinds the documents that were asked for, also those of which nothing had to be printed
 * @param files by name
 */
public record LotRecord(int format, String procedure, String section, String version, String build, SortedMap<String, String> inputs, List<Fact> figures,
        List<String> kinds, SortedMap<String, FileRecord> files) {
    static final String FOLDER = "manifest";
    private static final int FORMAT = 2;
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

    public LotRecord {
        inputs = Collections.unmodifiableSortedMap(new TreeMap<>(inputs == null ? Map.of() : inputs));
        figures = figures == null ? List.of() : List.copyOf(figures);
        kinds = kinds == null ? List.of() : List.copyOf(kinds);
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files == null ? Map.of() : files));
    }

    /** @param sha256 in hexadecimal */
    public record FileRecord(String kind, int pages, String sha256) {
    }

    static LotRecord of(Lot lot, String build, List<String> kinds, Map<String, FileRecord> files) {
        return new LotRecord(FORMAT, lot.name(), lot.folder(), lot.version(), build, new TreeMap<>(lot.inputs()), lot.facts(), kinds, new TreeMap<>(files));
    }

    private static final String OF_A_TERM = "term";

    static LotRecord ofTerm(TermLot lot, String build, Map<String, FileRecord> files) {
        return new LotRecord(FORMAT, lot.name(), "", lot.version(), build, lot.inputs(), lot.facts(), List.of(OF_A_TERM), new TreeMap<>(files));
    }

    /** Whether it is that of what a whole term has, not of a procedure. */
    public boolean isOfTerm() {
        return kinds.contains(OF_A_TERM);
    }

    /** Where a lot's page lies within its folder. */
    static String file(String name) {
        return FOLDER + "/" + name + ".json";
    }

    /** What the last print left; empty if there is nothing, or nothing that can be understood, so that it is printed again. */
    public static Optional<LotRecord> read(Path file) {
        try {
            LotRecord found = JSON.readValue(Files.readAllBytes(file), LotRecord.class);
            return found.format == FORMAT && found.version != null ? Optional.of(found) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    byte[] bytes() {
        try {
            return (JSON.writeValueAsString(this) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
