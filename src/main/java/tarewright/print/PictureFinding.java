package tarewright.print;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What can be wrong with an author's own picture. */
public sealed interface PictureFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** Nothing stands between the brackets: who cannot see the picture would get nothing. */
    record PictureWithoutWords(String file, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-without-words";
        }
    }

    /** It stands where no picture has room: in a table, a heading, a link, or inside marks for bold or italics. */
    record PictureInLine(String file, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-in-line";
        }
    }

    /** @param suggestions files of the folder with a like name, the nearest first */
    record PictureMissing(String file, List<String> suggestions, Span at) implements PictureFinding {
        public PictureMissing {
            suggestions = List.copyOf(suggestions);
        }

        @Override
        public String id() {
            return "picture-missing";
        }
    }

    /** An address, an absolute path, or a path (a symbolic link too) that leads out of the procedure's folder. */
    record PictureOutside(String file, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-outside";
        }
    }

    /** Neither SVG nor PNG by its name. */
    record PictureKind(String file, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-kind";
        }
    }

    /**
     * More than is read.
     *
     * @param has how much of it there is, as far as it was counted
     * @param limit how much may be
     * @param of {@code bytes}, {@code pixels}, {@code shapes} or {@code pictures}
     */
    record PictureTooLarge(String file, int has, int limit, String of, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-too-large";
        }
    }

    /**
     * With it, the pictures of the procedure are more than is read.
     *
     * @param of {@code bytes} (of drawings) or {@code pixels} (of photographs)
     */
    record PicturesTooLarge(String file, int limit, String of, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "pictures-too-large";
        }
    }

    /** It cannot be read as what its name says. @param kind {@code SVG} or {@code PNG} @param where a line of it, or the part of it that is bad */
    record PictureDamaged(String file, String kind, Optional<String> where, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-damaged";
        }
    }

    /** An SVG file holds what is not printed. @param holds as it stands in the file, each once */
    record PictureHolds(String file, List<String> holds, Span at) implements PictureFinding {
        public PictureHolds {
            holds = List.copyOf(holds);
        }

        @Override
        public String id() {
            return "picture-holds";
        }
    }

    /** Its text has letters that no typeface of ours has. @param letters each once */
    record PictureLetters(String file, List<String> letters, Span at) implements PictureFinding {
        public PictureLetters {
            letters = List.copyOf(letters);
        }

        @Override
        public String id() {
            return "picture-letters";
        }
    }

    /** Capital letters come out lower than ISO 3098 has any. @param millimetres how high they come out */
    record PictureSmallLetters(String file, String millimetres, Span at) implements PictureFinding {
        @Override
        public String id() {
            return "picture-small-letters";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }
}
