package tarewright.print;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import tarewright.procedure.syntax.PictureFile;

/**
 * A PNG file (ISO/IEC 15948) of the author's as dots in grey or RGB on white: only what makes the picture is read of it, no text, time or profile, and
 * nothing is decoded before its size is known. PDF/A-2 has transparency and profiles under conditions; without them there are none to keep.
 */
final class AuthorPng {
    /** More than a page of A4 at 300 dots to the inch. */
    static final int MOST_PIXELS = 9_000_000;
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final Set<String> KEPT = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    private static final double MILLIMETRES_PER_DOT = 25.4 / 96;
    private static final int DOTS_PER_INCH = 300;
    /** 25 and 1270 dots to the inch; a file that says something else is not believed. */
    private static final int FEWEST_PER_METRE = 1_000;
    private static final int MOST_PER_METRE = 50_000;

    private final String file;
    private double perMetre;

    private AuthorPng(String file) {
        this.file = file;
    }

    /** @param bytes the whole file */
    static PictureFile.Dots read(String file, byte[] bytes, String sha256) throws Refused {
        return new AuthorPng(file).read(bytes, sha256);
    }

    /** How many dots a file says that it has, none decoded; 0 where it does not say. */
    static long pixels(String file, byte[] bytes) throws Refused {
        if (bytes.length < 33) {
            return 0;
        }
        new AuthorPng(file).checkSize(bytes, 16, ByteBuffer.wrap(bytes, 8, 4).getInt());
        return (long) ByteBuffer.wrap(bytes, 16, 4).getInt() * ByteBuffer.wrap(bytes, 20, 4).getInt();
    }

    private PictureFile.Dots read(byte[] bytes, String sha256) throws Refused {
        byte[] bare = bare(bytes);
        BufferedImage image = decode(bare);
        double natural = perMetre > 0 ? 1000 / perMetre : MILLIMETRES_PER_DOT;
        PrintedSize size = PrintedSize.of(image.getWidth() * natural, image.getHeight() * natural);
        int parts = (int) Math.max(1, Math.floor(image.getWidth() / (size.width() / 25.4 * DOTS_PER_INCH)));
        return new PictureFile.Dots(Base64.getEncoder().encodeToString(encode(flat(image, parts))), size.width(), size.height(), sha256);
    }

    /** The chunks that make the picture, each whole; the size told by the first of them within what is read. */
    private byte[] bare(byte[] bytes) throws Refused {
        if (bytes.length < SIGNATURE.length || !Arrays.equals(SIGNATURE, Arrays.copyOf(bytes, SIGNATURE.length))) {
            throw damaged("");
        }
        ByteBuffer in = ByteBuffer.wrap(bytes, SIGNATURE.length, bytes.length - SIGNATURE.length);
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
        out.writeBytes(SIGNATURE);
        String name = "";
        while (!name.equals("IEND")) {
            boolean first = name.isEmpty();
            int from = in.position();
            int length = in.remaining() < 12 ? -1 : in.getInt();
            if (length < 0 || length > in.remaining() - 8) {
                throw damaged(name);
            }
            name = new String(bytes, from + 4, 4, java.nio.charset.StandardCharsets.ISO_8859_1);
            CRC32 sum = new CRC32();
            sum.update(bytes, from + 4, length + 4);
            in.position(from + 8 + length);
            if (in.getInt() != (int) sum.getValue() || first != name.equals("IHDR")) {
                throw damaged(name.replaceAll("[^A-Za-z]", "?"));
            }
            if (first) {
                checkSize(bytes, from + 8, length);
            } else if (name.equals("pHYs") && length == 9 && bytes[from + 16] == 1) {
                int told = ByteBuffer.wrap(bytes, from + 8, 4).getInt();
                perMetre = told >= FEWEST_PER_METRE && told <= MOST_PER_METRE ? told : 0;
            }
            if (KEPT.contains(name)) {
                out.write(bytes, from, length + 12);
            }
        }
        return out.toByteArray();
    }

    private void checkSize(byte[] bytes, int at, int length) throws Refused {
        if (length != 13) {
            throw damaged("IHDR");
        }
        long width = ByteBuffer.wrap(bytes, at, 4).getInt();
        long height = ByteBuffer.wrap(bytes, at + 4, 4).getInt();
        if (width < 1 || height < 1) {
            throw damaged("IHDR");
        }
        if (width * height > MOST_PIXELS) {
            throw new Refused(place -> new PictureFinding.PictureTooLarge(file, (int) Math.min(Integer.MAX_VALUE, width * height), MOST_PIXELS, "pixels", place));
        }
    }

    /** The library's own reader; what it warns of is damage too. */
    private BufferedImage decode(byte[] bare) throws Refused {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        AtomicBoolean warned = new AtomicBoolean();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bare))) {
            reader.setInput(in, true, false);
            IIOReadWarningListener note = (source, warning) -> warned.set(true);
            reader.addIIOReadWarningListener(note);
            BufferedImage image = reader.read(0);
            if (warned.get()) {
                throw damaged("IDAT");
            }
            return image;
        } catch (IOException | RuntimeException e) {
            // The reader answers some damage with exceptions that are meant for mistakes of a program.
            throw damaged("IDAT");
        } finally {
            reader.dispose();
        }
    }

    private Refused damaged(String chunk) {
        return new Refused(place -> new PictureFinding.PictureDamaged(file, "PNG", Optional.of(chunk).filter(c -> !c.isEmpty()), place));
    }

    /** Laid on white, and {@code parts} by {@code parts} dots made one by their mean: more than the printer shows only makes the file long. */
    private static BufferedImage flat(BufferedImage image, int parts) {
        int width = (image.getWidth() + parts - 1) / parts;
        int height = (image.getHeight() + parts - 1) / parts;
        int[] rgb = new int[width * height];
        boolean grey = true;
        Dot dot = Dot.of(image);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                rgb[y * width + x] = mean(image, dot, x * parts, y * parts, parts);
                int c = rgb[y * width + x];
                grey &= (c >> 16 & 255) == (c & 255) && (c >> 8 & 255) == (c & 255);
            }
        }
        BufferedImage flat = new BufferedImage(width, height, grey ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_INT_RGB);
        WritableRaster raster = flat.getRaster();
        for (int i = 0; i < rgb.length; i++) {
            if (grey) {
                raster.setSample(i % width, i / width, 0, rgb[i] & 255);
            } else {
                flat.setRGB(i % width, i / width, 0xff000000 | rgb[i]);
            }
        }
        return flat;
    }

    private static int mean(BufferedImage image, Dot dot, int left, int top, int parts) {
        long[] sum = new long[3];
        int count = 0;
        for (int y = top; y < Math.min(top + parts, image.getHeight()); y++) {
            for (int x = left; x < Math.min(left + parts, image.getWidth()); x++) {
                int argb = dot.argb(x, y);
                int alpha = argb >>> 24;
                for (int c = 0; c < 3; c++) {
                    sum[c] += ((argb >> 16 - 8 * c & 255) * alpha + 255 * (255 - alpha) + 127) / 255;
                }
                count++;
            }
        }
        return (int) ((sum[0] + count / 2) / count << 16 | (sum[1] + count / 2) / count << 8 | (sum[2] + count / 2) / count);
    }

    /** A dot as its numbers stand in the file; the library's own way would take grey for a linear space and change it. */
    private interface Dot {
        int argb(int x, int y);

        static Dot of(BufferedImage image) {
            if (image.getColorModel() instanceof IndexColorModel) {
                return image::getRGB;
            }
            Raster raster = image.getRaster();
            int bands = raster.getNumBands();
            int[] bits = image.getSampleModel().getSampleSize();
            int[] read = new int[bands];
            return (x, y) -> {
                raster.getPixel(x, y, read);
                for (int b = 0; b < bands; b++) {
                    read[b] = bits[b] == 8 ? read[b] : (int) Math.round(read[b] * 255.0 / ((1 << bits[b]) - 1));
                }
                int alpha = bands == 2 || bands == 4 ? read[bands - 1] : 255;
                return alpha << 24 | (bands < 3 ? read[0] << 16 | read[0] << 8 | read[0] : read[0] << 16 | read[1] << 8 | read[2]);
            };
        }
    }

    private static byte[] encode(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(to);
            IIOMetadata none = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
            writer.write(new javax.imageio.IIOImage(image, null, none));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
