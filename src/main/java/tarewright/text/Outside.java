package tarewright.text;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The one door to the world outside: files. Everything that reads or writes goes through it, so that a test can stand in for the disk. */
public interface Outside {
    /**
     * The bytes of a file.
     *
     * @throws IOException if it is not there, cannot be read, or is larger than {@code most} bytes ({@link TooLarge})
     */
    byte[] read(Path file, long most) throws IOException;

    /** The files directly in a folder, by name; no sub-folders. */
    List<Path> list(Path folder) throws IOException;

    boolean isFolder(Path path);

    boolean isFile(Path path);

    /**
     * Where a file or folder really lies, with every symbolic link followed.
     *
     * @throws IOException if it is not there
     */
    Path real(Path path) throws IOException;

    /** Puts a whole file in its place: the old one stands there until the new one is complete. */
    void replace(Path file, byte[] content) throws IOException;

    /** A file larger than it may be. */
    final class TooLarge extends IOException {
        private static final long serialVersionUID = 1;

        public TooLarge(Path file, long most) {
            super(file + " is larger than " + most + " bytes");
        }
    }
}
