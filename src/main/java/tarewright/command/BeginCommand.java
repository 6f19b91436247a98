package tarewright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code begin}: writes a short complete procedure to change into one's own. Never over a file that is there. */
@Command(name = "begin", sortOptions = false, description = {"Writes a short complete procedure to start from, ready to check and print.",
    "It goes into the folder `procedures`, or here if there is none."})
final class BeginCommand implements Callable<Integer> {
    private static final Path USUAL_FOLDER = Path.of("procedures");
    /** What every file system takes, and what reads well in a file name. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} _-]{0,79}");

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "NAME", description = "What to call it, such as rust-in-a-jar: the file's name without its ending.")
    private String name = "";
    @Option(names = "--kind", paramLabel = "KIND", defaultValue = "gas",
            description = "gas, titration, precipitate, solution, heat or synthesis (${DEFAULT-VALUE}).")
    private String kind = "gas";
    @Option(names = "--folder", paramLabel = "FOLDER", description = "Where to write it.")
    private Path folder = Files.isDirectory(USUAL_FOLDER) ? USUAL_FOLDER : Path.of("");
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;

    @Override
    public Integer call() {
        String plain = name.endsWith(".md") ? name.substring(0, name.length() - 3) : name;
        if (!NAME.matcher(plain).matches()) {
            throw new Inputs.Usage("`" + name + "` is no name for a procedure: take letters, digits, hyphens and spaces, up to 80 of them");
        }
        Beginning beginning = Beginning.words().contains(kind.strip().toLowerCase(Locale.ROOT)) ? Beginning.valueOf(kind.strip().toUpperCase(Locale.ROOT))
                : unknown();
        Path file = folder.resolve(plain.strip().replace(' ', '-') + ".md");
        if (Files.exists(file)) {
            throw new Inputs.Usage("`" + file + "` is there already, and stays as it is; choose another name");
        }
        try {
            new Disk().replace(file, beginning.text(title(plain)).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new Inputs.Usage("`" + file + "` cannot be written (" + e.getMessage() + ")");
        }
        spec.commandLine().getOut().println(file + " is written. Open it in a text editor, change it, then:\n  proof " + file + "\n  print " + file);
        return Main.CLEAN;
    }

    private Beginning unknown() {
        throw new Inputs.Usage("--kind takes " + String.join(", ", Beginning.words()) + ", not `" + kind + "`");
    }

    /** {@code rust-in-a-jar} is titled *Rust in a jar*. */
    private static String title(String name) {
        String words = name.strip().replaceAll("[-_ ]+", " ");
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }
}
