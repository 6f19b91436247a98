package tarewright.print;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.HexFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.PictureFile;
import tarewright.procedure.syntax.SourceFile;
import tarewright.text.Digest;
import tarewright.text.Outside;
import tarewright.text.Spelling;

/** The pictures that a procedure names, read from its own folder and nowhere else. */
public final class AuthorPictures {
    /** Of one file. */
    static final int MOST_BYTES = 4 << 20;
    /** Of one drawing: it is read as a tree, and each of its points is printed. */
    static final int MOST_DRAWN = 1 << 20;
    /** Of all drawings of one procedure. */
    static final int MOST_DRAWN_IN_ALL = 2 << 20;
    /** Of all photographs of one procedure: however small the file, each dot of it is decoded. */
    static final int MOST_PIXELS_IN_ALL = 12_000_000;
    /** Different files of one procedure. */
    static final int MOST_FILES = 30;

    private final Path folder;
    private final Outside outside;
    private final Outlines outlines = new Outlines();
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, PictureFile> read = new LinkedHashMap<>();
    private long pixels;
    private long drawn;
    private final Map<String, Refused> refused = new LinkedHashMap<>();

    private AuthorPictures(Path folder, Outside outside) {
        this.folder = folder;
        this.outside = outside;
    }

    /**
     * The same file with the pictures that it names, and what is wrong with them.
     *
     * @param folder the procedure's
     */
    public static Found<SourceFile> read(SourceFile source, Path folder, Outside outside) {
        return new AuthorPictures(folder, outside).read(source);
    }

    private Found<SourceFile> read(SourceFile source) {
        Set<Inline> placed = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        List<Inline.Picture> all = new ArrayList<>();
        Part.walk(source.body(), part -> {
            if (part instanceof Part.Paragraph paragraph) {
                placed.addAll(paragraph.inlines());
            }
            part.inlines().forEach(i -> Inline.walk(i, inline -> {
                if (inline instanceof Inline.Picture picture) {
                    all.add(picture);
                }
            }));
        });
        for (Inline.Picture picture : all) {
            if (!placed.contains(picture)) {
                findings.add(new PictureFinding.PictureInLine(picture.destination(), picture.span()));
            }
            if (picture.alternative().isBlank()) {
                findings.add(new PictureFinding.PictureWithoutWords(picture.destination(), picture.span()));
            }
            take(picture);
        }
        return new Found<>(read.isEmpty() ? source : source.withPictures(read), findings);
    }

    /** Each file once, however often it is named. */
    private void take(Inline.Picture picture) {
        String destination = picture.destination();
        if (read.containsKey(destination)) {
            return;
        }
        try {
            if (refused.containsKey(destination)) {
                throw refused.get(destination);
            }
            if (read.size() + refused.size() >= MOST_FILES) {
                throw new Refused(at -> new PictureFinding.PictureTooLarge(destination, MOST_FILES + 1, MOST_FILES, "pictures", at));
            }
            read.put(destination, file(picture));
        } catch (Refused why) {
            refused.put(destination, why);
            findings.add(why.at(picture.span()));
        }
    }

    private PictureFile file(Inline.Picture picture) throws Refused {
        String name = picture.destination();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        Path path = path(name);
        if (!Set.of("svg", "png").contains(ending)) {
            throw new Refused(at -> new PictureFinding.PictureKind(name, at));
        }
        byte[] bytes = bytes(name, path, ending.equals("svg") ? MOST_DRAWN : MOST_BYTES);
        String sha256 = HexFormat.of().formatHex(Digest.of(bytes));
        if (ending.equals("png")) {
            pixels = inAll(name, pixels + AuthorPng.pixels(name, bytes), MOST_PIXELS_IN_ALL, "pixels");
            return AuthorPng.read(name, bytes, sha256);
        }
        drawn = inAll(name, drawn + bytes.length, MOST_DRAWN_IN_ALL, "bytes");
        AuthorSvg.Read svg = AuthorSvg.read(name, bytes, sha256, outlines);
        svg.lowestCapitals().ifPresent(mm -> findings.add(new PictureFinding.PictureSmallLetters(name,
                BigDecimal.valueOf(mm).setScale(1, RoundingMode.DOWN).toPlainString(), picture.span())));
        return svg.shapes();
    }

    /** A path below the procedure's folder, links followed. */
    private Path path(String name) throws Refused {
        Refused outsideIt = new Refused(at -> new PictureFinding.PictureOutside(name, at));
        Optional<Path> plain = plain(name);
        if (plain.isEmpty()) {
            throw outsideIt;
        }
        Path file = folder.resolve(plain.get());
        if (!outside.isFile(file)) {
            throw new Refused(at -> new PictureFinding.PictureMissing(name, near(file), at));
        }
        try {
            if (!outside.real(file).startsWith(outside.real(folder))) {
                throw outsideIt;
            }
        } catch (IOException e) {
            throw outsideIt;
        }
        return file;
    }

    /** A relative path that leads nowhere up. An address has a colon, a path of another system a backslash. */
    private Optional<Path> plain(String name) {
        try {
            String decoded = URLDecoder.decode(name.replace("+", "%2B"), StandardCharsets.UTF_8);
            // The folder may lie in the program's own archive, which has paths of its own.
            Path path = folder.getFileSystem().getPath(decoded);
            boolean inside = !decoded.isBlank() && !decoded.contains(":") && !decoded.contains("\\") && !path.isAbsolute() && path.normalize().equals(path)
                    && !path.startsWith("..");
            return inside ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            // A percent sign that begins no code.
            return Optional.empty();
        }
    }

    private List<String> near(Path file) {
        try {
            List<String> beside = outside.list(Optional.ofNullable(file.getParent()).orElse(folder)).stream().map(p -> p.getFileName().toString())
                    .filter(n -> n.toLowerCase(Locale.ROOT).matches("(?s).*\\.(svg|png)")).toList();
            return Spelling.nearInAnyCase(file.getFileName().toString(), beside);
        } catch (IOException e) {
            return List.of();
        }
    }

    private static long inAll(String name, long has, int limit, String of) throws Refused {
        if (has > limit) {
            throw new Refused(at -> new PictureFinding.PicturesTooLarge(name, limit, of, at));
        }
        return has;
    }

    private byte[] bytes(String name, Path path, int most) throws Refused {
        try {
            return outside.read(path, most);
        } catch (Outside.TooLarge e) {
            throw new Refused(at -> new PictureFinding.PictureTooLarge(name, most + 1, most, "bytes", at));
        } catch (IOException e) {
            throw new Refused(at -> new PictureFinding.PictureMissing(name, List.of(), at));
        }
    }
}
