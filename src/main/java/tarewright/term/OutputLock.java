package tarewright.term;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Keeps two prints out of one folder. The system lets go of it when its process ends, however it ends; the empty file stays and blocks nobody. */
public final class OutputLock implements AutoCloseable {
    private final FileChannel channel;

    private OutputLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * The lock; empty while another print holds it.
     *
     * @throws IOException if the folder cannot be written to
     */
    public static Optional<OutputLock> of(Path folder) throws IOException {
        Files.createDirectories(folder);
        FileChannel channel = FileChannel.open(folder.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new OutputLock(channel));
            }
        } catch (OverlappingFileLockException e) {
            // Held by another thread of this process.
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
