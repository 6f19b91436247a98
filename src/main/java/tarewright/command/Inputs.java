package tarewright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tarewright.procedure.declare.TermReader;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.text.Outside;
import tarewright.text.SourceText;

/** Finds the procedures that the arguments name: a file as it is, of a folder every Markdown file but the read-me. */
final class Inputs {
    private final Outside outside;

    Inputs(Outside outside) {
        this.outside = outside;
    }

    /**
     * The files, in the order given, those of a folder by name.
     *
     * @throws Usage if an argument names nothing
     */
    List<InputFile> find(List<Path> arguments) {
        List<InputFile> files = new ArrayList<>();
        for (Path argument : arguments) {
            if (outside.isFolder(argument)) {
                folder(argument, files);
            } else if (outside.isFile(argument)) {
                if (isTerm(argument)) {
                    throw new Usage("`" + argument + "` is a term, or what a term reads beside its procedures: write `--term` and the term's file");
                }
                files.add(new InputFile(argument, argument.toString()));
            } else {
                throw new Usage("there is no file or folder `" + argument + "`");
            }
        }
        return files.stream().distinct().toList();
    }

    private void folder(Path folder, List<InputFile> files) {
        try {
            List<Path> found = outside.list(folder).stream().filter(f -> {
                String name = f.getFileName().toString();
                return name.endsWith(".md") && !name.equalsIgnoreCase("README.md") && !isTerm(f);
            }).toList();
            if (found.isEmpty()) {
                throw new Usage("there is no procedure (a file that ends in .md) in `" + folder + "`");
            }
            found.forEach(f -> files.add(new InputFile(f, f.toString())));
        } catch (IOException e) {
            throw new Usage("the folder `" + folder + "` cannot be read");
        }
    }

    /** A term, its stock and its sections lie among its procedures and are none of them. What cannot be read is told when it is read as a procedure. */
    private boolean isTerm(Path file) {
        try {
            String text = new String(outside.read(file, Workshop.MOST_BYTES), StandardCharsets.UTF_8);
            if (!text.startsWith("---") && !text.contains("```stock") && !text.contains("```section")) {
                return false;
            }
            SourceFile source = Reader.read(new SourceText(file.toString(), text)).value();
            return TermReader.isTerm(source) || TermReader.isBeside(source) || file.getFileName().toString().equals(Workshop.STOCK);
        } catch (IOException e) {
            return false;
        }
    }

    /** The arguments are off: told in one line, exit status 2. */
    static final class Usage extends RuntimeException {
        private static final long serialVersionUID = 1;

        Usage(String message) {
            super(message);
        }
    }
}
