package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.document.Sheet;

/** A folder of own templates takes the place of ours file by file, and can do no more than that. */
class OverrideTest {
    @TempDir
    Path folder;

    private final Sheet sheet = SampleSheets.handout(Sheet.Paper.A4);

    private String with(String file, String text) throws IOException {
        Files.writeString(folder.resolve(file), text);
        return new Xhtml(Templates.over(folder)).render(sheet);
    }

    @Test
    @DisplayName("one file replaces ours, the others stay")
    void oneFile() throws IOException {
        String page = Packed.text("templates/page.ftlx").replace("<div class=\"top\">",
                "<div class=\"top\"><p>Fennick Quay letterhead</p>");
        String markup = with("page.ftlx", page);
        assertTrue(markup.contains("Fennick Quay letterhead"));
        assertTrue(markup.contains("Drop in the ribbon"));
        String styled = with("handout.css", ".head-2 { text-transform: uppercase; }");
        assertTrue(styled.contains(".head-2 { text-transform: uppercase; }"));
        assertFalse(styled.contains("The handout: what is read at the bench"));
        Printed printed = new PdfPrinter(Templates.over(folder)).print(sheet);
        assertTrue(Pdf.pages(printed).get(0).contains("Fennick Quay letterhead"));
    }

    @Test
    @DisplayName("a folder that is not there is an empty one")
    void noFolder() {
        assertEquals(new Xhtml(Templates.packed()).render(sheet),
                new Xhtml(Templates.over(folder.resolve("none"))).render(sheet));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "${'freemarker.template.utility.Execute'?new()('id')}",
        "<#assign x = 'freemarker.template.utility.ObjectConstructor'?new()>",
        "<#assign x = 'freemarker.template.utility.JythonRuntime'?new()>",
        "${sheet?api.class}",
        "${sheet.title?api.getClass()}",
        "${sheet.class.name}",
        "${sheet.title.class}",
        "<#include '../../../../etc/hostname' parse=false>",
        "<#include '/../etc/hostname' parse=false>",
        "<#include 'file:///etc/hostname' parse=false>",
        "<#include 'http://localhost/x' parse=false>",
        "<#include '../fonts/DejaVu-LICENCE.txt' parse=false>",
        "<#import 'classpath:/tarewright/words/findings_en.properties' as x>",
        "${'1'?interpret}<#assign x = sheet?eval>",
        "${nothing.here}",
        "<#if>",
        "<p>"})
    @DisplayName("a template gets at no class, no method and no other file")
    void cannot(String template) {
        BrokenTemplate broken = assertThrows(BrokenTemplate.class, () -> {
            Files.writeString(folder.resolve("handout.ftlx"), template);
            new PdfPrinter(Templates.over(folder)).print(sheet);
        });
        assertEquals("handout.ftlx", broken.template());
        assertFalse(broken.says().isBlank());
    }

    @Test
    @DisplayName("a link that leads out of the folder is refused, in the folder and as the file itself")
    void links() throws IOException {
        Path inside = Files.createDirectory(folder.resolve("templates"));
        Path outside = Files.writeString(folder.resolve("outside.css"), "SECRET");
        Files.createSymbolicLink(inside.resolve("handout.css"), outside);
        BrokenTemplate broken = assertThrows(BrokenTemplate.class, () -> new Xhtml(Templates.over(inside)).render(sheet));
        assertFalse(broken.says().contains("SECRET"));
        Files.delete(inside.resolve("handout.css"));
        Files.createSymbolicLink(inside.resolve("up"), folder);
        Files.writeString(inside.resolve("handout.ftlx"), "<#include 'up/outside.css' parse=false>");
        BrokenTemplate through = assertThrows(BrokenTemplate.class, () -> new Xhtml(Templates.over(inside)).render(sheet));
        assertFalse(through.says().contains("SECRET"));
    }

    @Test
    @DisplayName("a mistake is told with its file, line and column")
    void mistake() throws IOException {
        Files.writeString(folder.resolve("pieces.ftlx"), Packed.text("templates/pieces.ftlx")
                .replace("<@line p.text/></p>\n</#macro>\n\n<#macro bullets",
                "<@lime p.text/></p>\n</#macro>\n\n<#macro bullets"));
        BrokenTemplate broken = assertThrows(BrokenTemplate.class, () -> new Xhtml(Templates.over(folder)).render(sheet));
        assertEquals("pieces.ftlx", broken.template());
        int line = Packed.text("templates/pieces.ftlx").lines().toList().indexOf("<#macro paragraph p>") + 2;
        assertEquals(Optional.of(line), broken.line());
        assertEquals(Optional.of(4 + 2), broken.column());
        assertTrue(broken.says().contains("lime"), broken.says());
    }

    @Test
    @DisplayName("whatever address a page names, nothing is fetched, and that is said")
    void nothingFetched() throws IOException {
        Path picture = folder.resolve("secret.css");
        Files.writeString(picture, "p { font-size: 40pt; }");
        for (String address : List.of(picture.toUri().toString(), "http://127.0.0.1:9/x.css", "jar:" + picture.toUri() + "!/x",
                "classpath:/x.css", "data:text/css,p{}", "x.css")) {
            Files.writeString(folder.resolve("handout.ftlx"), """
                    <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>x</title><meta name="subject" content="x"/>
                    <link rel="stylesheet" type="text/css" href="%1$s"/>
                    <style>@import url("%1$s"); @font-face { font-family: "x"; src: url("%1$s"); } p { background-image: url("%1$s"); }
                    * { font-family: "Source Sans 3"; }</style></head>
                    <body><p>words</p><p><img src="%1$s" alt="x"/></p></body></html>
                    """.formatted(address));
            Printed printed = new PdfPrinter(Templates.over(folder)).print(sheet);
            assertTrue(printed.remarks().size() >= 2, address + " " + printed.remarks());
            assertTrue(Pdf.lines(printed).stream().allMatch(line -> line.size() < 14), address);
        }
    }

    @Test
    @DisplayName("a document type, and with it any entity, is refused")
    void entities() {
        BrokenTemplate broken = assertThrows(BrokenTemplate.class, () -> {
            Files.writeString(folder.resolve("handout.ftlx"),
                    "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><html><body>&x;</body></html>");
            new PdfPrinter(Templates.over(folder)).print(sheet);
        });
        assertTrue(broken.says().contains("DOCTYPE"), broken.says());
    }
}
