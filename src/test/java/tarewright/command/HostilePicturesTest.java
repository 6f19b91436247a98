package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pictures made to hurt: more dots than any memory holds, little files that unpack without end, drawings of a million points, links out of the folder. All of them in one real
 * process with 256 MB; each ends in its finding. How long each takes is measured by hand; the bound on time here only stops what would never end.
 */
class HostilePicturesTest {
    private static final String HEAD = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 40\">";
    private static final String SALT = "---\ntitle: Salt\n---\n\n```solid salt\nsubstance: sodium chloride\nmass: 5.85 g\n```\n\n";
    private static final int ENDLESS_SECONDS = 300;

    @TempDir
    private Path folder;
    private final Map<String, String> expected = new TreeMap<>();

    @Test
    void everyTrapIsToldInTwoHundredAndFiftySixMegabytes() throws Exception {
        trap("dots", "picture-too-large", "p.png", png(100_000, 100_000, 1_000));
        trap("whole-pages", "pictures-too-large", "p.png", png(3_000, 2_999, 3_000 * 4 * 2_999L + 2_999), "q.png", png(2_999, 3_000, 0));
        trap("dots-that-are-not-there", "picture-damaged", "p.png", png(1_000, 1_000, 10));
        trap("points", "picture-too-large", "p.svg", drawing("<path d=\"M0 0" + "L1 1".repeat(1_000_000) + "\"/>"));
        trap("drawings", "pictures-too-large", "p.svg", drawing("<path d=\"M0 0" + "L1 1".repeat(240_000) + "\"/>"), "q.svg", drawing("<g>" + " ".repeat(1_000_000) + "</g>"),
                "r.svg", drawing("<g>" + " ".repeat(400_000) + "</g>"));
        trap("letters", "picture-holds", "p.svg", drawing("<text>" + "a".repeat(900_000) + "</text>"));
        trap("dashes", "picture-holds", "p.svg", drawing("<line x2=\"60\" stroke=\"black\" stroke-dasharray=\"" + "1 ".repeat(400_000) + "\"/>"));
        trap("groups", "picture-holds", "p.svg", drawing("<g>".repeat(100_000) + "</g>".repeat(100_000)));
        trap("attributes", "picture-damaged", "p.svg", drawing("<g " + attributes(50_000) + "/>"));
        trap("entities", "picture-holds", "p.svg", ("<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY x SYSTEM \"file:///etc/hostname\">]>"
                + HEAD + "<text>&b;&x;</text></svg>").getBytes(StandardCharsets.UTF_8));
        trap("included", "picture-holds", "p.svg", drawing("<image href=\"file:///etc/hostname\" width=\"9\" height=\"9\"/><use href=\"http://example.org/a.svg#b\"/>"));
        link("link-out", "picture-outside", Files.writeString(folder.resolve("elsewhere.svg"), HEAD + "</svg>"));
        link("link-to-itself", "picture-missing", Path.of("p.svg"));
        address("file", "file:///etc/hostname.svg");
        address("http", "http://example.org/p.png");
        address("up", "../elsewhere.svg");
        StringBuilder many = new StringBuilder(SALT);
        for (int i = 0; i < 1_900; i++) {
            many.append("![words](n").append(i).append(".png)\n\n");
        }
        write("many", "picture-too-large", many.toString());
        assertEquals(expected, found());
    }

    /** The traps of one file told by the command, as a person runs it. */
    private Map<String, String> found() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), Main.class.getName(), "proof", "--json"));
        expected.keySet().forEach(name -> command.add(folder.resolve(name).resolve("trap.md").toString()));
        Path out = folder.resolve("out.json");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertTrue(process.waitFor(ENDLESS_SECONDS, TimeUnit.SECONDS), "no end");
        assertEquals("", Files.readString(err));
        assertEquals(1, process.exitValue());
        Map<String, String> found = new TreeMap<>();
        try (MappingIterator<JsonNode> files = new ObjectMapper().readerFor(JsonNode.class).readValues(out.toFile())) {
            while (files.hasNext()) {
                JsonNode file = files.next();
                String name = Path.of(file.path("file").asText()).getParent().getFileName().toString();
                List<String> ids = new ArrayList<>();
                file.path("findings").forEach(f -> {
                    assertTrue(f.path("line").asInt() >= 1, f::toString);
                    ids.add(f.path("id").asText());
                });
                found.put(name, ids.contains(expected.get(name)) ? expected.get(name) : ids.toString());
            }
        }
        return found;
    }

    private void write(String name, String finds, String text) throws IOException {
        Files.writeString(Files.createDirectories(folder.resolve(name)).resolve("trap.md"), text);
        expected.put(name, finds);
    }

    private void trap(String name, String finds, Object... files) throws IOException {
        StringBuilder text = new StringBuilder(SALT);
        for (int i = 0; i < files.length; i += 2) {
            Files.write(Files.createDirectories(folder.resolve(name)).resolve((String) files[i]), (byte[]) files[i + 1]);
            text.append("![words](").append(files[i]).append(")\n\n");
        }
        write(name, finds, text.toString());
    }

    private void link(String name, String finds, Path to) throws IOException {
        write(name, finds, SALT + "![words](p.svg)\n");
        Files.createSymbolicLink(folder.resolve(name).resolve("p.svg"), to);
    }

    private void address(String name, String address) throws IOException {
        write("address-" + name, "picture-outside", SALT + "![words](" + address + ")\n");
    }

    private static byte[] drawing(String inside) {
        return (HEAD + inside + "</svg>").getBytes(StandardCharsets.UTF_8);
    }

    private static String attributes(int count) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < count; i++) {
            all.append('a').append(i).append("=\"\" ");
        }
        return all.toString();
    }

    /** A PNG file (ISO/IEC 15948) of eight bits of red, green, blue and opacity, all zero. @param bytes of the dots, as many as are really there */
    private static byte[] png(int width, int height, long bytes) throws IOException {
        ByteArrayOutputStream dots = new ByteArrayOutputStream();
        try (OutputStream packed = new DeflaterOutputStream(dots)) {
            byte[] row = new byte[100_000];
            for (long left = bytes; left > 0; left -= row.length) {
                packed.write(row, 0, (int) Math.min(left, row.length));
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        chunk(out, "IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put(new byte[] {8, 6, 0, 0, 0}).array());
        chunk(out, "IDAT", dots.toByteArray());
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String name, byte[] content) {
        byte[] named = ByteBuffer.allocate(4 + content.length).put(name.getBytes(StandardCharsets.ISO_8859_1)).put(content).array();
        CRC32 sum = new CRC32();
        sum.update(named);
        out.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
        out.writeBytes(named);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }
}
