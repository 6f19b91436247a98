package tarewright.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** What to say and to do where sheets cannot be put into a folder. */
final class CannotWrite {
    private CannotWrite() {
    }

    static String says(Path folder, IOException e) {
        return "tarewright: `" + folder + "` cannot be written (" + why(e) + "). What was there stays. Free some space, close the file where it is open, or choose another folder with --out.";
    }

    private static String why(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no leave to write to " + e.getMessage();
        }
        return e instanceof FileSystemException f && f.getReason() != null ? Path.of(f.getFile()).getFileName() + ": " + f.getReason() : e.getMessage();
    }
}
