package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import tarewright.print.VeraPdf;

/** An author's own pictures from her folder to every format, as a person prints them. */
class PicturesTest {
    private static final String PROCEDURE = """
            ---
            title: Salt with pictures
            ---

            ```apparatus
            balance: balance; reads to 0.01 g; one per class
            ```

            ```solid salt
            substance: sodium chloride
            mass: 5.85 g
            weigh with: balance
            ```

            1. Weigh {salt} of {label of salt} on the dish. ![A dish with {salt} of salt](dish.png)

            2. Look at it. ![A balance with a dish on its pan](balance.svg) Note what you see.

            3. What amount is that?

               ```answer
               value: moles of salt
               unit: mmol
               marks: 1
               ```

            ```waste
            into: the sink, with plenty of water
            ```
            """;
    private static final String DRAWING = """
            <svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="40mm" viewBox="0 0 80 40"><title>xyzzy</title><!-- xyzzy -->
            <rect x="10" y="20" width="60" height="15" fill="#dddddd" stroke="black"/><ellipse cx="40" cy="18" rx="15" ry="3" fill="none" stroke="black"/>
            <text x="40" y="30" font-size="5" text-anchor="middle">%s</text></svg>
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void pictures() throws IOException {
        Files.writeString(folder.resolve("salt.md"), PROCEDURE);
        draw("balance");
        BufferedImage image = new BufferedImage(120, 60, BufferedImage.TYPE_INT_ARGB);
        for (int x = 0; x < 60; x++) {
            image.setRGB(x, 30, 0x80ff0000);
        }
        ImageIO.write(image, "png", folder.resolve("dish.png").toFile());
    }

    private void draw(String word) throws IOException {
        Files.writeString(folder.resolve("balance.svg"), String.format(java.util.Locale.ROOT, DRAWING, word));
    }

    private String print(String as) {
        StringWriter err = new StringWriter();
        int status = Main.run(new String[] {"print", "--as", as, "--only", "handout,key", "--out", folder.resolve("out").toString(), folder.resolve("salt.md").toString()},
                new PrintWriter(new StringWriter()), new PrintWriter(err));
        assertEquals(0, status, err::toString);
        return err.toString();
    }

    private byte[] out(String name) throws IOException {
        return Files.readAllBytes(folder.resolve("out").resolve(name));
    }

    /** The alternatives of the figures in a file's tags, those of the pictures alone. */
    private static List<String> alternatives(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> found = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), found);
            return found.stream().filter(a -> a.contains("dish")).toList();
        }
    }

    private static void collect(PDStructureNode node, List<String> into) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if ("Figure".equals(element.getStructureType())) {
                    into.add(element.getAlternateDescription());
                }
                collect(element, into);
            }
        }
    }

    @Test
    @DisplayName("handout and key's double carry both pictures with their descriptions, amounts in them filled in, and conform")
    void pdf() throws Exception {
        print("pdf");
        List<String> expected = List.of("A dish with 5.85\u202Fg of salt", "A balance with a dish on its pan");
        for (String name : List.of("salt-handout.pdf", "salt-key.pdf")) {
            assertEquals(expected, alternatives(out(name)), name);
            for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
                assertEquals(List.of(), VeraPdf.check(out(name), flavour).failures());
            }
        }
        try (PDDocument document = Loader.loadPDF(out("salt-handout.pdf"))) {
            int images = 0;
            for (var name : document.getPage(0).getResources().getXObjectNames()) {
                images += document.getPage(0).getResources().isImageXObject(name) ? 1 : 0;
            }
            assertEquals(1, images, "the drawing is no picture in dots");
        }
    }

    @Test
    @DisplayName("the page for a browser carries both in itself, and the editable copy as pictures with their descriptions")
    void others() throws Exception {
        print("html,docx");
        String page = new String(out("salt-handout.html"), StandardCharsets.UTF_8);
        assertTrue(page.contains("alt=\"A dish with 5.85\u202Fg of salt\" src=\"data:image/png;base64,"));
        assertTrue(page.contains("aria-label=\"A balance with a dish on its pan\""));
        assertTrue(page.contains("img-src data:"));
        String document = "";
        int pictures = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out("salt-handout.docx")))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] content = zip.readAllBytes();
                document = entry.getName().equals("word/document.xml") ? new String(content, StandardCharsets.UTF_8) : document;
                BufferedImage image = entry.getName().startsWith("word/media/") ? ImageIO.read(new ByteArrayInputStream(content)) : null;
                pictures += image != null && image.getWidth() == 120 ? 1 : 0;
            }
        }
        assertEquals(1, pictures);
        assertTrue(document.contains("A balance with a dish on its pan") && document.contains("A dish with 5.85\u202Fg of salt"));
    }

    @Test
    @DisplayName("words that a drawing holds for itself (title, comment) reach no file")
    void nothingHidden() throws Exception {
        print("pdf,html,docx");
        for (String name : List.of("salt-handout.pdf", "salt-handout.html", "salt-handout.docx", "salt-key.pdf", "salt-key.html")) {
            assertFalse(unpacked(out(name)).contains("xyzzy"), name);
        }
    }

    /** The bytes of a file as letters, every compressed stretch of it unpacked. */
    private static String unpacked(byte[] file) throws IOException {
        StringBuilder all = new StringBuilder(new String(file, StandardCharsets.ISO_8859_1));
        String raw = all.toString();
        for (int at = raw.indexOf("stream"); at >= 0; at = raw.indexOf("stream", at + 6)) {
            int from = at + (raw.startsWith("\r\n", at + 6) ? 8 : 7);
            try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(file, Math.min(from, file.length), Math.max(0, file.length - from)))) {
                all.append(new String(in.readAllBytes(), StandardCharsets.ISO_8859_1));
            } catch (IOException e) {
                // No compressed stretch begins here.
                all.append(' ');
            }
        }
        if (raw.startsWith("PK")) {
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
                while (zip.getNextEntry() != null) {
                    ByteArrayOutputStream each = new ByteArrayOutputStream();
                    zip.transferTo(each);
                    all.append(each.toString(StandardCharsets.ISO_8859_1));
                }
            }
        }
        return all.toString();
    }

    @Test
    @DisplayName("a picture that was changed is another version and is printed anew; the same picture is not")
    void version() throws Exception {
        print("pdf");
        byte[] before = out("salt-handout.pdf");
        print("pdf");
        assertEquals(code(before), code(out("salt-handout.pdf")));
        draw("scales");
        print("pdf");
        assertNotEquals(code(before), code(out("salt-handout.pdf")));
    }

    private static String code(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new org.apache.pdfbox.text.PDFTextStripper().getText(document);
            return text.replaceAll("(?s).*handout · ([a-z2-7]{7}).*", "$1");
        }
    }

    @Test
    @DisplayName("a picture that cannot be printed keeps the procedure from being printed; what was there stays")
    void stays() throws Exception {
        print("pdf");
        byte[] before = out("salt-handout.pdf");
        Files.delete(folder.resolve("dish.png"));
        StringWriter err = new StringWriter();
        assertEquals(1, Main.run(new String[] {"print", "--out", folder.resolve("out").toString(), folder.resolve("salt.md").toString()}, new PrintWriter(new StringWriter()),
                new PrintWriter(err)));
        assertTrue(err.toString().contains("picture-missing"), err::toString);
        assertEquals(java.util.Arrays.hashCode(before), java.util.Arrays.hashCode(out("salt-handout.pdf")));
    }
}
