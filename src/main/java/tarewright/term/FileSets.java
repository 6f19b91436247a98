package tarewright.term;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Replaces files of one folder as a set, so that a kill at any moment leaves no two of one set that do not belong together.
 *
 * <p>The new files are written and forced in a folder beside them, {@code .<set>.next}. Renaming it to {@code .<set>.ready} decides: before, the old
 * set stands; after, the new one will. Then the old files step aside, and the new ones take their places. What a kill leaves, {@link #recover} takes
 * back (before the renaming) or carries on with (after it).
 *
 * <p>A file system renames one name at a time, so of a set under several names some moment must show either old beside new or one missing. Here it is
 * one missing: nobody can copy a handout with the key to another. An ordinary end of the program waits for that moment to pass ({@link Unbroken}).
 */
public final class FileSets {
    private static final String NEXT = ".next";
    private static final String READY = ".ready";
    private static final String OLD = ".old";
    private static final String GONE = ".gone";
    private final Path folder;
    private final Runnable beforeEach;

    public FileSets(Path folder) {
        this(folder, () -> { });
    }

    /** @param beforeEach is run before each single thing that is done to the disk */
    FileSets(Path folder, Runnable beforeEach) {
        this.folder = folder;
        this.beforeEach = beforeEach;
    }

    /**
     * Puts a set in the place of the earlier one.
     *
     * @param files by name within the folder, {@code /} between the parts
     * @param gone names of the earlier set that the new one lacks
     * @throws IOException if that cannot be; the earlier set then stands as it did
     */
    public void replace(String set, Map<String, byte[]> files, Set<String> gone) throws IOException {
        Files.createDirectories(folder);
        Path next = folder.resolve("." + set + NEXT);
        Path ready = folder.resolve("." + set + READY);
        try {
            delete(next);
            Files.createDirectories(next);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                write(next.resolve(file.getKey()), file.getValue());
                Files.createDirectories(folder.resolve(file.getKey()).getParent());
            }
            write(next.resolve(GONE), String.join("\n", gone).getBytes(java.nio.charset.StandardCharsets.UTF_8));
            force(next);
            beforeEach.run();
            Files.move(next, ready, StandardCopyOption.ATOMIC_MOVE);
            force(folder);
        } catch (IOException e) {
            delete(next);
            throw e;
        }
        Unbroken.run(() -> settle(set, ready, false));
    }

    /** Takes back or carries on with what a killed print left. */
    public void recover() throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        List<Path> left;
        try (Stream<Path> all = Files.list(folder)) {
            left = all.filter(Files::isDirectory).filter(p -> p.getFileName().toString().startsWith(".")).sorted().toList();
        }
        for (Path path : left) {
            String name = path.getFileName().toString();
            if (name.endsWith(NEXT)) {
                delete(path);
            } else if (name.endsWith(READY)) {
                String set = name.substring(1, name.length() - READY.length());
                Unbroken.run(() -> settle(set, path, true));
            }
        }
        for (Path path : left) {
            if (path.getFileName().toString().endsWith(OLD)) {
                delete(path);
            }
        }
    }

    /** @param again after a kill: some may be in place already, so that there is no way back */
    private void settle(String set, Path ready, boolean again) throws IOException {
        Path old = folder.resolve("." + set + OLD);
        Map<Path, Path> aside = new LinkedHashMap<>();
        List<Path> placed = new ArrayList<>();
        List<String> names = names(ready);
        try {
            Files.createDirectories(old);
            List<String> leaving = new ArrayList<>(names);
            leaving.addAll(gone(ready));
            for (String name : leaving) {
                Path place = folder.resolve(name);
                if (Files.isDirectory(place)) {
                    throw new FileSystemException(place.toString(), null, "a folder stands in its place");
                }
                if (Files.exists(place)) {
                    Path out = old.resolve(name);
                    Files.createDirectories(out.getParent());
                    beforeEach.run();
                    Files.move(place, out, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                    aside.put(place, out);
                }
            }
            for (String name : names) {
                Files.createDirectories(folder.resolve(name).getParent());
                beforeEach.run();
                Files.move(ready.resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
                placed.add(folder.resolve(name));
            }
        } catch (IOException e) {
            if (again) {
                throw e;
            }
            for (Path each : placed) {
                Files.move(each, ready.resolve(folder.relativize(each).toString()), StandardCopyOption.ATOMIC_MOVE);
            }
            for (Map.Entry<Path, Path> each : aside.entrySet()) {
                Files.move(each.getValue(), each.getKey(), StandardCopyOption.REPLACE_EXISTING);
            }
            delete(ready);
            delete(old);
            throw e;
        }
        force(folder);
        beforeEach.run();
        delete(ready);
        beforeEach.run();
        delete(old);
    }

    /** Without the list a kill came while what was finished was cleared away: nothing is left to do. */
    private static List<String> gone(Path ready) throws IOException {
        Path list = ready.resolve(GONE);
        return Files.exists(list) ? Files.readString(list).lines().filter(n -> !n.isBlank()).toList() : List.of();
    }

    private static List<String> names(Path ready) throws IOException {
        try (Stream<Path> all = Files.walk(ready)) {
            return all.filter(Files::isRegularFile).map(p -> ready.relativize(p).toString().replace('\\', '/'))
                    .filter(n -> !n.equals(GONE)).sorted().toList();
        }
    }

    private void write(Path file, byte[] content) throws IOException {
        beforeEach.run();
        Files.createDirectories(file.getParent());
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    /** So that the names last through a power cut; where a folder cannot be opened (Windows), the system sees to it. */
    private static void force(Path directory) {
        try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }

    private static void delete(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (NoSuchFileException e) {
            return;
        }
    }
}
