package tarewright.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The disk as tests below the command read it; nothing is written. */
public final class ReadDisk implements Outside {
    @Override
    public byte[] read(Path file, long most) throws IOException {
        byte[] all = Files.readAllBytes(file);
        if (all.length > most) {
            throw new TooLarge(file, most);
        }
        return all;
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
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

    @Override
    public void replace(Path file, byte[] content) {
        throw new AssertionError("nothing is written");
    }
}
