package tarewright.term;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import tarewright.print.PacketPdf;

/** What a term has beside the documents of its lots: packets of its sections, and files for all of it. What lies there already is not written again. */
public final class TermFiles {
    private final Path out;

    public TermFiles(Path out) {
        this.out = out;
    }

    /**
     * Puts a file into the output folder.
     *
     * @return whether it had to be written
     * @throws IOException if it cannot be; the earlier one then stands
     */
    public boolean put(String file, byte[] content) throws IOException {
        return put(out, file, content);
    }

    /**
     * Puts what a whole term has into the output folder, all of it or nothing, with its page of the manifest.
     *
     * @param build of the program
     * @return whether it had to be written
     * @throws IOException if it cannot be; the earlier set then stands
     */
    public boolean put(TermLot lot, List<LotDocument> documents, String build) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Map<String, LotRecord.FileRecord> records = new TreeMap<>();
        for (LotDocument document : documents) {
            byte[] pdf = document.printed().pdf();
            files.put(document.file(), pdf);
            records.put(document.file(), new LotRecord.FileRecord(document.kind().word(), document.printed().pages(), Hash.of(pdf)));
        }
        files.put(LotRecord.file(lot.name()), lot.record(build, records).bytes());
        FileSets sets = new FileSets(out);
        sets.recover();
        for (Map.Entry<String, byte[]> each : files.entrySet()) {
            Path place = out.resolve(each.getKey());
            if (!Files.isRegularFile(place) || !Arrays.equals(Files.readAllBytes(place), each.getValue())) {
                sets.replace(lot.name(), files, Set.of());
                return true;
            }
        }
        return false;
    }

    private static boolean put(Path folder, String file, byte[] content) throws IOException {
        FileSets sets = new FileSets(folder);
        sets.recover();
        Path place = folder.resolve(file);
        if (Files.isRegularFile(place) && Arrays.equals(Files.readAllBytes(place), content)) {
            return false;
        }
        int dot = file.lastIndexOf('.');
        sets.replace(dot > 0 ? file.substring(0, dot) : file, Map.of(file, content), Set.of());
        return true;
    }

    /**
     * A section's documents in one file, as often as they are copied.
     *
     * @param section its name
     * @param folder its folder
     * @param order how often each of its files is copied, in copying order; one that is not there had nothing to print
     * @throws IOException if it cannot be written
     */
    public List<Copying> packet(String section, String folder, Map<String, Integer> order) throws IOException {
        List<PacketPdf.Part> parts = new ArrayList<>();
        List<Copying> copying = new ArrayList<>();
        for (Map.Entry<String, Integer> each : order.entrySet()) {
            if (!Files.isRegularFile(out.resolve(folder).resolve(each.getKey()))) {
                continue;
            }
            byte[] pdf = Files.readAllBytes(out.resolve(folder).resolve(each.getKey()));
            String name = each.getKey().substring(0, each.getKey().lastIndexOf('.'));
            parts.add(new PacketPdf.Part(name, pdf, each.getValue()));
            copying.add(new Copying(section, name, PacketPdf.pages(pdf), each.getValue()));
        }
        put(out.resolve(folder), folder + "-packet.pdf", PacketPdf.of(section, parts, true));
        return copying;
    }

}
