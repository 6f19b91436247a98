package tarewright.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.print.AuthorPictures;
import tarewright.procedure.check.Checks;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.ReadDisk;
import tarewright.text.SourceText;

/** The procedures that we ship, through the same steps as a user's file. */
public final class Library {
    static final ReferenceTables TABLES = Tables.load();
    private static final Path FOLDER = Path.of("procedures");

    private Library() {
    }

    public static List<Path> files() {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(f -> f.toString().endsWith(".md") && !text(f).startsWith("---\nterm:")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Path file(String procedure) {
        return FOLDER.resolve(procedure + ".md");
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The procedure for a setting, with what was found by reading, resolving and checking it, less what the author has answered. */
    public static Found<Resolved> resolve(Path file, Overrides overrides) {
        SourceText text = new SourceText(file.getFileName().toString(), text(file));
        Found<SourceFile> read = Reader.read(text);
        Found<SourceFile> source = AuthorPictures.read(read.value(), FOLDER, new ReadDisk());
        Found<Resolved> resolved = Resolver.resolve(text.name().replace(".md", ""), source.value(), overrides, TABLES);
        List<Finding> findings = new ArrayList<>(read.findings());
        findings.addAll(source.findings());
        findings.addAll(resolved.findings());
        findings.addAll(Checks.run(resolved.value()));
        return new Found<>(resolved.value(), Checks.unanswered(resolved.value(), findings));
    }

    /** So many groups in a room of its own. */
    public static Overrides setting(int groups, String temperature, String pressure) {
        return Overrides.NONE.withGroups(groups)
                .withRoom(new Overrides.Air(Optional.of(typed(temperature)), Optional.of(typed(pressure)), Optional.empty(), Optional.empty()));
    }

    private static Typed typed(String text) {
        return ((QuantityResult.Ok) QuantityText.parse(text)).typed();
    }
}
