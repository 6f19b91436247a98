package tarewright.term;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import tarewright.document.Sheet;
import tarewright.print.Format;
import tarewright.print.PdfPrinter;
import tarewright.print.Presses;
import tarewright.term.LotRecord.FileRecord;

/** Prints lots into an output folder: what is unchanged is left alone, what is not is replaced as a set. */
public final class Printing {
    private static final String LARGE = "large";
    private final Path out;
    private final String build;

    /** @param build of the program */
    public Printing(Path out, String build) {
        this.out = out;
        this.build = build;
    }

    /** @param printed anew. @param unchanged what lies there as it would be printed */
    public record Outcome(List<LotDocument> printed, List<FileRecord> unchanged) {
        public Outcome {
            printed = List.copyOf(printed);
            unchanged = List.copyOf(unchanged);
        }
    }

    /**
     * Prints what is not there already. Where the version has changed, every document that lies there from the earlier one is printed with those asked
     * for, so that all of a lot belong together.
     *
     * @throws IOException if it cannot be written; the earlier files then stand
     * @throws tarewright.print.BrokenTemplate if a template in the person's own folder cannot be used
     */
    public Outcome print(Lot lot, PdfPrinter printer) throws IOException {
        return print(lot, Set.of(Format.PDF), printer);
    }

    /** The same in these formats. */
    public Outcome print(Lot lot, Set<Format> wish, PdfPrinter printer) throws IOException {
        return print(lot, wish, Presses.of(printer));
    }

    /** The same by several printers. A format that lies there already is printed with them, so that a page for a browser is never older than the paper. */
    public Outcome print(Lot lot, Set<Format> wish, Presses presses) throws IOException {
        Path folder = out.resolve(lot.folder());
        FileSets sets = new FileSets(folder);
        sets.recover();
        Map<String, FileRecord> before = new TreeMap<>();
        Set<String> kindsBefore = new TreeSet<>();
        Set<Format> formats = EnumSet.copyOf(wish);
        boolean same = false;
        var earlier = LotRecord.read(folder.resolve(LotRecord.file(lot.name())));
        if (earlier.isPresent()) {
            before.putAll(earlier.get().files());
            kindsBefore.addAll(earlier.get().kinds());
            same = earlier.get().version().equals(lot.version()) && earlier.get().build().equals(build)
                    && (!lot.large() || kindsBefore.contains(LARGE)) && formats(before).containsAll(wish);
            formats.addAll(formats(before));
        }
        Set<Sheet.Kind> wanted = EnumSet.noneOf(Sheet.Kind.class);
        for (Sheet.Kind kind : Sheet.Kind.values()) {
            boolean asked = lot.kinds().contains(kind);
            boolean there = kindsBefore.contains(kind.word());
            if (same ? asked && (!there || !sound(folder, kind, before)) : asked || there) {
                wanted.add(kind);
            }
        }
        List<FileRecord> unchanged = before.values().stream().filter(f -> lot.kinds().stream().anyMatch(k -> k.word().equals(f.kind())))
                .filter(f -> wanted.stream().noneMatch(k -> k.word().equals(f.kind()))).toList();
        if (wanted.isEmpty()) {
            return new Outcome(List.of(), unchanged);
        }
        boolean large = lot.large() || kindsBefore.contains(LARGE);
        List<LotDocument> documents = lot.only(wanted, large).print(presses, formats);
        Map<String, byte[]> files = new LinkedHashMap<>();
        Map<String, FileRecord> after = new TreeMap<>(before);
        after.values().removeIf(f -> wanted.stream().anyMatch(k -> k.word().equals(f.kind())));
        for (LotDocument document : documents) {
            byte[] pdf = document.printed().pdf();
            files.put(document.file(), pdf);
            after.put(document.file(), new FileRecord(document.kind().word(), document.printed().pages(), Hash.of(pdf)));
        }
        if (large) {
            kindsBefore.add(LARGE);
        }
        wanted.forEach(k -> kindsBefore.add(k.word()));
        Set<String> gone = new TreeSet<>(before.keySet());
        gone.removeAll(after.keySet());
        files.put(LotRecord.file(lot.name()), LotRecord.of(lot, build, new ArrayList<>(kindsBefore), after).bytes());
        sets.replace(lot.name(), files, gone);
        return new Outcome(documents, unchanged);
    }

    private static Set<Format> formats(Map<String, FileRecord> files) {
        Set<Format> formats = EnumSet.noneOf(Format.class);
        for (Format format : Format.values()) {
            if (files.keySet().stream().anyMatch(f -> f.endsWith("." + format.word()))) {
                formats.add(format);
            }
        }
        return formats;
    }

    private static boolean sound(Path folder, Sheet.Kind kind, Map<String, FileRecord> files) {
        return files.entrySet().stream().filter(f -> f.getValue().kind().equals(kind.word())).allMatch(f -> {
            try {
                return Hash.of(Files.readAllBytes(folder.resolve(f.getKey()))).equals(f.getValue().sha256());
            } catch (IOException e) {
                return false;
            }
        });
    }
}
