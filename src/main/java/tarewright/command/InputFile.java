package tarewright.command;

import java.nio.file.Path;

/**
 * A procedure's file.
 *
 * @param path where it is
 * @param shown what a message calls it
 */
record InputFile(Path path, String shown) {
    /** The procedure's name: the file's name without its ending. */
    String name() {
        String file = path.getFileName().toString();
        return file.endsWith(".md") ? file.substring(0, file.length() - 3) : file;
    }
}
