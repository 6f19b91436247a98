package tarewright.command;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** The procedures that travel with the program, for a folder that has none of its own. */
final class PackedProcedures {
    private static final String PLACE = "/tarewright/procedures";

    private PackedProcedures() {
    }

    /** The folder of them, inside the program's own archive or beside its classes; it stays open until the program ends. */
    static Optional<Path> folder() {
        URL place = PackedProcedures.class.getResource(PLACE);
        if (place == null) {
            return Optional.empty();
        }
        try {
            URI uri = place.toURI();
            return Optional.of(uri.getScheme().equals("jar") ? archive(uri).getPath(PLACE) : Path.of(uri));
        } catch (URISyntaxException | IOException e) {
            return Optional.empty();
        }
    }

    private static FileSystem archive(URI uri) throws IOException {
        try {
            return FileSystems.getFileSystem(uri);
        } catch (FileSystemNotFoundException e) {
            return FileSystems.newFileSystem(uri, Map.of());
        }
    }
}
