package tarewright.term;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What was printed into an output folder: the records of its own folder {@code manifest} and of those of its sections. */
public final class Manifest {
    private final Map<List<String>, LotRecord> records = new TreeMap<>((a, b) -> String.join("\u0000", a).compareTo(String.join("\u0000", b)));

    private Manifest() {
    }

    /**
     * Of an output folder, of a folder {@code manifest}, or of one file of it; empty where nothing was printed.
     *
     * @throws IOException if it cannot be read
     */
    public static Manifest of(Path from) throws IOException {
        Manifest all = new Manifest();
        if (Files.isRegularFile(from)) {
            LotRecord.read(from).ifPresent(all::add);
        } else if (Files.isDirectory(from.resolve(LotRecord.FOLDER))) {
            all.folder(from.resolve(LotRecord.FOLDER));
        } else if (Files.isDirectory(from)) {
            all.folder(from);
        }
        if (Files.isDirectory(from)) {
            try (Stream<Path> sections = Files.list(from)) {
                for (Path section : sections.filter(s -> Files.isDirectory(s.resolve(LotRecord.FOLDER))).sorted().toList()) {
                    all.folder(section.resolve(LotRecord.FOLDER));
                }
            }
        }
        return all;
    }

    private void folder(Path manifest) throws IOException {
        try (Stream<Path> files = Files.list(manifest)) {
            files.filter(f -> f.toString().endsWith(".json")).sorted().forEach(f -> LotRecord.read(f).ifPresent(this::add));
        }
    }

    private void add(LotRecord lot) {
        records.put(List.of(lot.section(), lot.procedure()), lot);
    }

    /** @param section its folder; empty for none */
    public Optional<LotRecord> record(String section, String procedure) {
        return Optional.ofNullable(records.get(List.of(section, procedure)));
    }

    /** All of them, by section and procedure. */
    public List<LotRecord> records() {
        return List.copyOf(records.values());
    }

    /** The files of a record that do not lie in an output folder as they were printed. */
    public static List<String> altered(LotRecord printed, Path out) {
        List<String> altered = new ArrayList<>();
        printed.files().forEach((name, file) -> {
            try {
                if (!Hash.of(Files.readAllBytes(out.resolve(printed.section()).resolve(name))).equals(file.sha256())) {
                    altered.add(name);
                }
            } catch (IOException e) {
                altered.add(name);
            }
        });
        return altered;
    }
}
