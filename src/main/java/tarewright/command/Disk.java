package tarewright.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import tarewright.text.Outside;

/** The real disk. */
final class Disk implements Outside {
    @Override
    public byte[] read(Path file, long most) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE - 8));
            if (bytes.length > most) {
                throw new TooLarge(file, most);
            }
            return bytes;
        }
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @Override
    public boolean isFolder(Path path) {
        return Files.isDirectory(path);
    }

    @Override
    public boolean isFile(Path path) {
        return Files.isRegularFile(path);
    }

    @Override
    public Path real(Path path) throws IOException {
        return path.toRealPath();
    }

    /** Written beside its place, forced to the disk, then moved over the old one in one step. */
    @Override
    public void replace(Path file, byte[] content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        // Not createTempFile: that keeps the file from everybody else, and the sheet is for a shared folder.
        Path beside = folder.resolve("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING)) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            try {
                Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
