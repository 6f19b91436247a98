package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Found;
import tarewright.procedure.syntax.PictureFile;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.text.ReadDisk;
import tarewright.text.SourceText;

/** An author's own pictures: what is printed of a file, and what each file that is not printed is told. */
class AuthorPicturesTest {
    private static final String HEAD = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 40\">";

    @TempDir
    private Path folder;

    private Found<SourceFile> read(String markdown) {
        return AuthorPictures.read(Reader.read(new SourceText("p.md", markdown)).value(), folder, new ReadDisk());
    }

    private List<String> ids(String markdown) {
        return read(markdown).findings().stream().map(f -> f.id()).toList();
    }

    private PictureFile picture(String name, byte[] content) throws IOException {
        Files.write(folder.resolve(name), content);
        Found<SourceFile> read = read("![words](" + name + ")");
        assertEquals(List.of(), read.findings());
        return read.value().pictures().get(name);
    }

    private PictureFile.Shapes shapes(String svg) throws IOException {
        return (PictureFile.Shapes) picture("p.svg", svg.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> idsOf(String name, byte[] content) throws IOException {
        Files.write(folder.resolve(name), content);
        return ids("![words](" + name + ")");
    }

    private PictureFinding.PictureHolds holds(String inside) throws IOException {
        Files.writeString(folder.resolve("p.svg"), HEAD + inside + "</svg>");
        return (PictureFinding.PictureHolds) read("![words](p.svg)").findings().get(0);
    }

    // --- where it lies

    @ParameterizedTest
    @DisplayName("a picture is read from the procedure's own folder and from nowhere else, and is told what is wrong with its name")
    @CsvSource({"missing.svg, picture-missing", "../p.svg, picture-outside", "sub/../../p.svg, picture-outside", "/etc/hostname.svg, picture-outside",
        "http://example.org/p.svg, picture-outside", "data:image/png;base64.png, picture-outside", "file:///p.svg, picture-outside", "..%2Fp.svg, picture-outside",
        "a%zz.svg, picture-outside", "%00.svg, picture-outside", "sub\\p.svg, picture-outside", "notes.txt, picture-kind", "photo.jpg, picture-kind", "sub, picture-missing"})
    void whereItLies(String name, String id) throws IOException {
        Path inner = Files.createDirectories(folder.resolve("inner"));
        Files.createDirectories(inner.resolve("sub"));
        for (Path each : List.of(folder.resolve("p.svg"), inner.resolve("notes.txt"), inner.resolve("photo.jpg"))) {
            Files.writeString(each, HEAD + "</svg>");
        }
        SourceFile source = Reader.read(new SourceText("p.md", "![words](<" + name + ">)")).value();
        assertEquals(List.of(id), AuthorPictures.read(source, inner, new ReadDisk()).findings().stream().map(f -> f.id()).toList());
    }

    @Test
    @DisplayName("a symbolic link that leads out of the folder is not followed; one that stays inside is, and a folder below may hold pictures")
    void links() throws IOException {
        Path inner = Files.createDirectories(folder.resolve("inner").resolve("below")).getParent();
        Files.writeString(folder.resolve("out.svg"), HEAD + "</svg>");
        Files.writeString(inner.resolve("below").resolve("in it.svg"), HEAD + "</svg>");
        Files.createSymbolicLink(inner.resolve("leads-out.svg"), folder.resolve("out.svg"));
        Files.createSymbolicLink(inner.resolve("stays.svg"), Path.of("below", "in it.svg"));
        Files.createSymbolicLink(inner.resolve("away"), folder);
        SourceFile source = Reader.read(new SourceText("p.md", "![a](leads-out.svg) ![b](stays.svg) ![c](below/in%20it.svg) ![d](away/out.svg)")).value();
        Found<SourceFile> read = AuthorPictures.read(source, inner, new ReadDisk());
        assertEquals(List.of("picture-outside", "picture-outside"), read.findings().stream().map(f -> f.id()).toList());
        assertEquals(2, read.value().pictures().size());
    }

    @Test
    @DisplayName("a name that is nearly a file's is told which")
    void nearly() throws IOException {
        Files.writeString(folder.resolve("Flask.svg"), HEAD + "</svg>");
        assertEquals(List.of("Flask.svg"), ((PictureFinding.PictureMissing) read("![a](flask.svg)").findings().get(0)).suggestions());
    }

    @Test
    @DisplayName("a picture without a description, or where no picture has room, is told")
    void wordsAndPlace() throws IOException {
        Files.writeString(folder.resolve("p.svg"), HEAD + "</svg>");
        assertEquals(List.of("picture-without-words"), ids("![](p.svg)"));
        assertEquals(List.of("picture-in-line"), ids("# Title ![a](p.svg)"));
        assertEquals(List.of("picture-in-line"), ids("|a|\n|-|\n|![a](p.svg)|\n"));
        assertEquals(List.of("picture-in-line"), ids("Words **![a](p.svg)**"));
        assertEquals(List.of("picture-in-line"), ids("Words [![a](p.svg)](there)"));
        assertEquals(List.of(), ids("1. Step. ![a](p.svg)\n\n   ![b](p.svg)\n\n> ![c](p.svg)\n"));
    }

    // --- drawings

    @ParameterizedTest
    @DisplayName("a drawing that holds what a page cannot show in flat colours, or what reaches outside, is refused by the name of it")
    @CsvSource(delimiter = '|', value = {"<script>alert(1)</script> | <script>", "<image href='http://example.org/x.png' width='1' height='1'/> | <image>",
        "<use href='#a'/> | <use>", "<a href='http://example.org'><rect width='1' height='1'/></a> | <a>", "<rect width='9' height='9' onclick='alert(1)'/> | onclick",
        "<rect width='9' height='9' fill='url(#g)'/> | fill: url(#g)", "<rect width='9' height='9' opacity='0.5'/> | opacity: 0.5",
        "<g style='fill-opacity:.3'><rect width='9' height='9'/></g> | fill-opacity: .3", "<rect width='9' height='9' style='filter:url(#b)'/> | filter",
        "<path d='M0 0 L5 5' marker-end='url(#arrow)'/> | marker-end", "<g clip-path='url(#c)'/> | clip-path", "<foreignObject/> | <foreignObject>",
        "<style>rect{fill:red}</style> | <style>", "<text><textPath href='#p'>words</textPath></text> | <textPath>", "<animate/> | <animate>",
        "<path d='M0 0 L nonsense'/> | d: M0 0 L nonsense", "<path d='M0 0 L1e300 0'/> | d: Infinity", "<rect width='1e9' height='4'/> | width: 1e9",
        "<g transform='rotate(q)'/> | transform: rotate(q)", "<rect width='9' height='9' fill='glow'/> | fill: glow", "<polygon points='1 2 3'/> | points: 1 2 3",
        "<line x2='60' stroke='black' stroke-dasharray='0.00001'/> | stroke-dasharray", "<line x2='60' stroke-width='-1'/> | stroke-width: -1",
        "<text rotate='10'>words</text> | rotate", "<switch/> | <switch>"})
    void notPrinted(String inside, String what) throws IOException {
        assertEquals(List.of(what), holds(inside).holds());
    }

    @Test
    @DisplayName("a document type, and with it every entity, is refused; a file that is no SVG is damaged; letters that no face has are named")
    void notReadAtAll() throws IOException {
        String bomb = "<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>" + HEAD + "<text>&b;</text></svg>";
        assertEquals(List.of("picture-holds"), idsOf("p.svg", bomb.getBytes(StandardCharsets.UTF_8)));
        for (String bad : List.of("", "words", "<svg/>", "<svg xmlns='http://www.w3.org/2000/svg'/>", HEAD, HEAD.replace("60 40", "60 0") + "</svg>",
                "<html xmlns='http://www.w3.org/1999/xhtml'/>", "\u001f\u008b\b")) {
            assertEquals(List.of("picture-damaged"), idsOf("p.svg", bad.getBytes(StandardCharsets.UTF_8)), bad);
        }
        assertEquals(List.of("picture-letters"), idsOf("p.svg", (HEAD + "<text>\uAC00 \u05D0</text></svg>").getBytes(StandardCharsets.UTF_8)));
        assertEquals(List.of("picture-holds"), idsOf("p.svg", (HEAD + "<g>".repeat(2_000) + "</g>".repeat(2_000) + "</svg>").getBytes(StandardCharsets.UTF_8)));
        assertEquals(List.of("picture-too-large"), idsOf("p.svg", (HEAD + "<rect width='1' height='1'/>".repeat(10_001) + "</svg>").getBytes(StandardCharsets.UTF_8)));
        assertEquals(List.of("picture-too-large"), idsOf("p.svg", new byte[AuthorPictures.MOST_BYTES + 1]));
    }

    @Test
    @DisplayName("titles, descriptions, metadata, comments, names and what is not shown are left behind")
    void leftBehind() throws IOException {
        String svg = "<?xml version='1.0'?><!-- xyzzy --><?xyzzy?>" + HEAD + "<title>xyzzy</title><desc>xyzzy</desc><metadata><x xmlns='y'>xyzzy</x></metadata><defs><g id='xyzzy'/></defs>"
                + "<g id='xyzzy' class='xyzzy' xmlns:i='http://example.org/xyzzy' i:label='xyzzy'><title>xyzzy</title><rect width='9' height='9'/>xyzzy</g>"
                + "<text display='none'>xyzzy</text><text visibility='hidden'>xyzzy</text><text opacity='0'>xyzzy</text></svg>";
        String out = shapes(svg).svg();
        assertFalse(out.contains("xyzzy"), out);
        assertTrue(out.contains("<path d=\"M0 0L9 0L9 9L0 9"), out);
        assertEquals(1, out.split("<path", -1).length - 1);
    }

    @Test
    @DisplayName("a drawing is as large as its file says, but never wider or higher than there is room")
    void sizes() throws IOException {
        assertEquals(50, shapes("<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='20mm' viewBox='0 0 5 2'/>").widthMillimetres(), 1e-9);
        // CSS Values 3 (W3C, 2022): 96 px are an inch.
        assertEquals(25.4, shapes("<svg xmlns='http://www.w3.org/2000/svg' width='96' height='48px'/>").widthMillimetres(), 1e-9);
        PictureFile wide = shapes("<svg xmlns='http://www.w3.org/2000/svg' width='1m' viewBox='0 0 2000 1000'/>");
        assertEquals(110, wide.widthMillimetres(), 1e-9);
        assertEquals(55, wide.heightMillimetres(), 1e-9);
        assertEquals(80, shapes("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1000 2000'/>").heightMillimetres(), 1e-9);
    }

    @ParameterizedTest
    @DisplayName("a drawing looks as a renderer of SVG shows the author's own file")
    @ValueSource(strings = {
        "<rect x='5' y='5' width='20' height='10' rx='3' fill='red' stroke='#00f' stroke-width='2'/><circle cx='40' cy='20' r='12' fill='rgb(10%,80%,10%)'/>",
        "<g transform='translate(10,5) rotate(15) scale(1.5,0.8)' style='fill:none;stroke:navy;stroke-width:1.5px;stroke-linejoin:round'><path d='M2 2h10v12a6 6 0 1 1-10 0z'/>"
                + "<polyline points='15,2 20,12 25,2'/></g>",
        "<ellipse cx='50%' cy='50%' rx='25' ry='10%' fill='gold'/><line x1='0' y1='0' x2='60' y2='40' stroke='black' stroke-dasharray='3,2' stroke-dashoffset='1' stroke-linecap='square'/>",
        "<polygon points='10,5 40,5 15,30 25,0 35,30' fill-rule='evenodd' fill='currentColor' color='teal'/><path d='M5 35 q10 -10 20 0 t20 0' stroke='#555' fill='none'/>",
        "<g fill='silver'><g fill='inherit' stroke='black'><rect x='-20' y='20' width='100%' height='50' stroke-miterlimit='2'/></g><rect width='9' height='9' display='none'/></g>"})
    void looksAsItDoesElsewhere(String inside) throws Exception {
        String svg = HEAD + inside + "</svg>";
        BufferedImage theirs = painted(svg.replace("<svg ", "<svg width='600' height='400' "));
        BufferedImage ours = painted(shapes(svg).svg());
        int differ = 0;
        int inked = 0;
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 600; x++) {
                differ += far(theirs.getRGB(x, y), ours.getRGB(x, y)) ? 1 : 0;
                inked += far(0xffffffff, theirs.getRGB(x, y)) ? 1 : 0;
            }
        }
        assertTrue(inked > 5_000, "hardly anything was drawn: " + inked);
        assertTrue(differ < 300, differ + " of 240000 dots differ");
    }

    private static boolean far(int one, int other) {
        return Math.abs((one >> 16 & 255) - (other >> 16 & 255)) + Math.abs((one >> 8 & 255) - (other >> 8 & 255)) + Math.abs((one & 255) - (other & 255)) > 60;
    }

    /** By the renderer alone, on white. */
    private static BufferedImage painted(String svg) throws Exception {
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, 600f);
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, 400f);
        transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, java.awt.Color.WHITE);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(out));
        return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
    }

    @Test
    @DisplayName("text comes as outlines of our own letters: from its place, up to it or around it as its anchor says")
    void text() throws Exception {
        String text = HEAD.replace("60 40", "600 400") + "<text x='300' y='%d' font-size='40' text-anchor='%s'>Huh<tspan dx='40'>!</tspan></text></svg>";
        int[] start = inked(painted(shapes(String.format(java.util.Locale.ROOT, text, 200, "start")).svg()));
        int[] end = inked(painted(shapes(String.format(java.util.Locale.ROOT, text, 200, "end")).svg()));
        int[] middle = inked(painted(shapes(String.format(java.util.Locale.ROOT, text, 200, "middle")).svg()));
        // Source Sans 3, read with another reader of typefaces: H begins 0.09 of the size behind its origin, capitals are 0.66 high, the four letters and the shift are as wide together.
        float width = width("Huh!") * 40 + 40;
        assertEquals(300 + 0.09 * 40, start[0], 1.5);
        assertEquals(start[0] - width, end[0], 1.5);
        assertEquals(start[0] - width / 2, middle[0], 1.5);
        assertEquals(200, start[3], 1.5);
        assertTrue(start[2] < 200 - 0.65 * 40 && start[2] > 200 - 0.75 * 40, Arrays.toString(start));
    }

    /** Advance widths by the JDK's own reader of typefaces, for a size of 1. */
    private static float width(String words) throws Exception {
        java.awt.Font face = java.awt.Font.createFont(java.awt.Font.TRUETYPE_FONT, new ByteArrayInputStream(Packed.bytes("fonts/SourceSans3-Regular.ttf"))).deriveFont(1000f);
        var context = new java.awt.font.FontRenderContext(null, true, true);
        float width = 0;
        for (char letter : words.toCharArray()) {
            width += face.createGlyphVector(context, new char[] {letter}).getGlyphMetrics(0).getAdvanceX();
        }
        return width / 1000;
    }

    /** Left, right, top and bottom of what is painted. */
    private static int[] inked(BufferedImage image) {
        int[] box = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 255) < 128) {
                    box = new int[] {Math.min(box[0], x), Math.max(box[1], x + 1), Math.min(box[2], y), Math.max(box[3], y + 1)};
                }
            }
        }
        return box;
    }

    @Test
    @DisplayName("capitals lower than 1.8 mm (ISO 3098-1) in print are told, with their height")
    void smallLetters() throws IOException {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='%dmm' viewBox='0 0 110 50'><text y='9' font-size='3'>Aa</text></svg>";
        Files.writeString(folder.resolve("p.svg"), String.format(java.util.Locale.ROOT, svg, 110));
        assertEquals(List.of(), ids("![a](p.svg)"));
        Files.writeString(folder.resolve("p.svg"), String.format(java.util.Locale.ROOT, svg, 55));
        assertEquals("0.9", ((PictureFinding.PictureSmallLetters) read("![a](p.svg)").findings().get(0)).millimetres());
    }

    // --- photographs

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    private BufferedImage printed(byte[] png) throws IOException {
        PictureFile.Dots dots = (PictureFile.Dots) picture("p.png", png);
        return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(dots.png())));
    }

    private static byte[] chunk(String name, byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(name.getBytes(StandardCharsets.ISO_8859_1));
        sum.update(content);
        return ByteBuffer.allocate(content.length + 12).putInt(content.length).put(name.getBytes(StandardCharsets.ISO_8859_1)).put(content).putInt((int) sum.getValue()).array();
    }

    /** Puts chunks behind the header of a PNG file. */
    private static byte[] with(byte[] png, byte[]... chunks) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, 33);
        Arrays.stream(chunks).forEach(out::writeBytes);
        out.write(png, 33, png.length - 33);
        return out.toByteArray();
    }

    @Test
    @DisplayName("what shows through is laid on white as ISO/IEC 15948, 13.16 composes it, and nothing shows through afterwards")
    void onWhite() throws IOException {
        BufferedImage image = new BufferedImage(3, 1, BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, 0x80c81e1e);
        image.setRGB(1, 0, 0x00000000);
        image.setRGB(2, 0, 0xff123456);
        BufferedImage out = printed(png(image));
        assertFalse(out.getColorModel().hasAlpha());
        // alpha × foreground + (1 − alpha) × background: 128/255 × 200 + 127/255 × 255 = 227.4; 128/255 × 30 + 127 = 142.06
        assertEquals("ffe38e8e ffffffff ff123456", String.format(java.util.Locale.ROOT, "%x %x %x", out.getRGB(0, 0), out.getRGB(1, 0), out.getRGB(2, 0)));
    }

    @Test
    @DisplayName("grey stays grey, number for number, in 8 and in 16 bits")
    void grey() throws IOException {
        for (int type : List.of(BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_USHORT_GRAY, BufferedImage.TYPE_INT_RGB)) {
            BufferedImage image = new BufferedImage(256, 1, type);
            for (int x = 0; x < 256; x++) {
                int[] dot = type == BufferedImage.TYPE_INT_RGB ? new int[] {x, x, x} : new int[] {type == BufferedImage.TYPE_BYTE_GRAY ? x : 257 * x};
                image.getRaster().setPixel(x, 0, dot);
            }
            BufferedImage out = printed(png(image));
            assertEquals(1, out.getRaster().getNumBands());
            for (int x = 0; x < 256; x++) {
                assertEquals(x, out.getRaster().getSample(x, 0, 0));
            }
        }
    }

    @Test
    @DisplayName("a PNG file's text, time and profile stay behind; how large it is printed follows from its dots to the metre")
    void chunks() throws IOException {
        byte[] plain = png(new BufferedImage(300, 150, BufferedImage.TYPE_BYTE_GRAY));
        byte[] full = with(plain, chunk("pHYs", ByteBuffer.allocate(9).putInt(11_811).putInt(11_811).put((byte) 1).array()),
                chunk("tEXt", "Comment\0xyzzy".getBytes(StandardCharsets.ISO_8859_1)), chunk("eXIf", "xyzzy".getBytes(StandardCharsets.ISO_8859_1)));
        PictureFile.Dots dots = (PictureFile.Dots) picture("p.png", full);
        assertEquals(25.4, dots.widthMillimetres(), 0.01);
        assertEquals(12.7, dots.heightMillimetres(), 0.01);
        String out = new String(Base64.getDecoder().decode(dots.png()), StandardCharsets.ISO_8859_1);
        assertFalse(out.contains("xyzzy"));
        List<String> names = new ArrayList<>();
        for (int at = 8; at < out.length(); at += 12 + ByteBuffer.wrap(out.getBytes(StandardCharsets.ISO_8859_1), at, 4).getInt()) {
            names.add(out.substring(at + 4, at + 8));
        }
        assertEquals(List.of("IHDR", "IDAT", "IEND"), names.stream().distinct().toList());
        assertEquals(79.375, ((PictureFile.Dots) picture("q.png", plain)).widthMillimetres(), 1e-9, "96 dots to the inch where it says nothing");
    }

    @Test
    @DisplayName("a photograph of more dots than 300 to the inch is printed with fewer, as the mean of those that lie together")
    void fewerDots() throws IOException {
        BufferedImage image = new BufferedImage(3_000, 1_500, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < 1_500; y++) {
            for (int x = 0; x < 3_000; x++) {
                image.getRaster().setSample(x, y, 0, (x + y) % 2 == 0 ? 0 : 200);
            }
        }
        BufferedImage out = printed(png(image));
        assertEquals(1_500, out.getWidth());
        assertEquals(100, out.getRaster().getSample(700, 300, 0));
    }

    @Test
    @DisplayName("the dots are counted before any is decoded; a file that ends early, is spoilt or is something else is damaged")
    void damaged() throws IOException {
        byte[] good = png(new BufferedImage(40, 40, BufferedImage.TYPE_INT_RGB));
        byte[] huge = good.clone();
        ByteBuffer.wrap(huge).putInt(16, 100_000).putInt(20, 100_000);
        CRC32 sum = new CRC32();
        sum.update(huge, 12, 17);
        ByteBuffer.wrap(huge).putInt(29, (int) sum.getValue());
        assertEquals(List.of("picture-too-large"), idsOf("p.png", huge));
        for (int length = 0; length < good.length; length++) {
            assertEquals(List.of("picture-damaged"), idsOf("p.png", Arrays.copyOf(good, length)), "cut at " + length);
        }
        for (int at = 0; at < good.length; at++) {
            byte[] spoilt = good.clone();
            spoilt[at] ^= 0x55;
            assertTrue(List.of(List.of("picture-damaged"), List.of("picture-too-large")).contains(idsOf("p.png", spoilt)), "spoilt at " + at);
        }
        assertEquals(List.of("picture-damaged"), idsOf("p.png", (HEAD + "</svg>").getBytes(StandardCharsets.UTF_8)));
        // Every chunk is whole, but the dots inside are not.
        assertEquals(List.of("picture-damaged"), idsOf("p.png", with(Arrays.copyOf(good, 33), chunk("IDAT", new byte[] {1, 2, 3}), chunk("IEND", new byte[0]))));
    }

    @Test
    @DisplayName("any spoilt drawing is read or refused, never a crash, and what is read is what the printer takes")
    void anySpoiltDrawing() throws IOException {
        String good = HEAD + "<g transform='rotate(10 3 4)' style='fill:none;stroke:#123'><path d='M1 2 L3 4 q5 6 7 8 a1 2 3 0 1 4 5z'/><text x='1 2' dy='.3em'>Words <tspan>more</tspan></text>"
                + "<rect x='1mm' width='50%' height='3' rx='1'/><polyline points='1,2 3,4'/></g></svg>";
        SplittableRandom random = new SplittableRandom(64);
        String alphabet = "<>/'\"= -.0123456789eE%#;:MmLlAaqz\u00e9\u0000";
        int read = 0;
        for (int i = 0; i < 600; i++) {
            StringBuilder spoilt = new StringBuilder(good);
            for (int n = random.nextInt(1, 4); n > 0; n--) {
                spoilt.setCharAt(random.nextInt(spoilt.length()), alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Files.writeString(folder.resolve("p.svg"), spoilt);
            SourceFile file = read("![a](p.svg)").value();
            if (file.pictures().get("p.svg") instanceof PictureFile.Shapes shapes) {
                SafeSvg.of(shapes.svg());
                read++;
            }
        }
        assertTrue(read > 30, "read: " + read);
    }
}
