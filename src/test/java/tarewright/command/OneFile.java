package tarewright.command;

import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import tarewright.text.Outside;

/** A folder with one file and nothing beside it, each time with another content: the tables are read once for all of them. */
final class OneFile implements Outside {
    private byte[] content = {};

    void holds(byte[] now) {
        content = now.clone();
    }

    @Override
    public byte[] read(Path file, long most) {
        return content.clone();
    }

    @Override
    public List<Path> list(Path folder) {
        return List.of();
    }

    @Override
    public boolean isFolder(Path path) {
        return false;
    }

    @Override
    public boolean isFile(Path path) {
        return false;
    }

    @Override
    public Path real(Path path) throws NoSuchFileException {
        throw new NoSuchFileException(path.toString());
    }

    @Override
    public void replace(Path file, byte[] written) {
        throw new AssertionError("proof writes nothing");
    }
}
