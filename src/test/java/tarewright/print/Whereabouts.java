package tarewright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/**
 * On which page of a printed file the parts of its sheet stand, read out of the file. A part is found by runs of its words that stand in the
 * file just once; formulas, amounts and what clings to them are painted apart from the words around them and are left out.
 */
final class Whereabouts {
    private static final int SHORTEST = 9;

    private final List<String> pages = new ArrayList<>();
    private final String sheet;

    Whereabouts(Sheet sheet, Printed printed) {
        this.sheet = bare(PlainText.of(sheet));
        try (PDDocument document = Pdf.open(printed)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(bare(stripper.getText(document)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> pages() {
        return pages;
    }

    /** The pages that hold runs of words of these pieces; empty where no run is its own. */
    Set<Integer> of(List<Piece> pieces) {
        Set<Integer> found = new TreeSet<>();
        pieces.forEach(piece -> texts(piece).forEach(text -> found.addAll(ofText(text))));
        return found;
    }

    /** The page of the first run of words that is its own. */
    OptionalInt first(Piece piece) {
        for (List<Text> text : texts(piece)) {
            Set<Integer> on = ofText(text);
            if (!on.isEmpty()) {
                return OptionalInt.of(on.iterator().next());
            }
        }
        return OptionalInt.empty();
    }

    Set<Integer> ofText(List<Text> text) {
        Set<Integer> found = new TreeSet<>();
        runsOf(text).forEach(run -> page(run).ifPresent(found::add));
        return found;
    }

    /** What was found where, for a message. */
    String stand(List<Piece> pieces) {
        return runs(pieces).stream().map(run -> run + " on page " + page(run).orElse(0)).toList().toString();
    }

    /** The runs of words of these pieces that stand in the file just once. */
    List<String> runs(List<Piece> pieces) {
        return pieces.stream().flatMap(piece -> texts(piece).stream()).flatMap(text -> runsOf(text).stream())
                .filter(run -> page(run).isPresent()).map(Whereabouts::bare).toList();
    }

    /** Runs of three words: the first and the last word of a text may cling to a formula. */
    private static List<String> runsOf(List<Text> text) {
        List<String> runs = new ArrayList<>();
        boolean alone = text.size() == 1;
        for (Text part : text) {
            if (part instanceof Text.Words words) {
                String[] each = words.text().strip().split("\\s+");
                for (int from = alone ? 0 : 1; from + 3 <= each.length - (alone ? 0 : 1); from += 2) {
                    runs.add(each[from] + each[from + 1] + each[from + 2]);
                }
                if (alone && each.length < 3) {
                    runs.add(words.text());
                }
            } else if (part instanceof Text.Strong strong) {
                runs.addAll(runsOf(strong.inside()));
            }
        }
        return runs;
    }

    /** The page of words that stand in the file just once; a run that goes over the page stands on the first of the two. */
    private OptionalInt page(String words) {
        String run = bare(words);
        if (sheet.indexOf(run) < 0 || sheet.indexOf(run, sheet.indexOf(run) + 1) >= 0) {
            return OptionalInt.empty();
        }
        int found = -1;
        for (int page = 0; run.length() >= SHORTEST && page < pages.size(); page++) {
            int at = pages.get(page).indexOf(run);
            if (at >= 0) {
                if (found >= 0 || pages.get(page).indexOf(run, at + 1) >= 0) {
                    return OptionalInt.empty();
                }
                found = page + 1;
            }
        }
        return found < 0 ? OptionalInt.empty() : OptionalInt.of(found);
    }

    /** The lines of text of a piece in their order, those of its parts included. */
    static List<List<Text>> texts(Piece piece) {
        List<List<Text>> all = new ArrayList<>();
        if (piece instanceof Piece.Heading p) {
            all.add(p.text());
        } else if (piece instanceof Piece.Paragraph p) {
            all.add(p.text());
        } else if (piece instanceof Piece.Caution p) {
            all.addAll(List.of(p.hazard(), p.consequence(), p.avoid()));
        } else if (piece instanceof Piece.Table p) {
            all.add(p.caption());
            all.addAll(p.head());
            p.rows().forEach(all::addAll);
        } else if (piece instanceof Piece.Question p) {
            p.asked().forEach(a -> all.addAll(texts(a)));
            p.space().forEach(a -> all.addAll(texts(a)));
            p.parts().forEach(a -> all.addAll(texts(a)));
        } else if (piece instanceof Piece.Hazard p) {
            all.add(p.name());
            p.statements().forEach(s -> all.add(List.of(new Text.Words(s))));
        } else if (piece instanceof Piece.Choices p) {
            all.addAll(p.options());
        } else if (piece instanceof Piece.Signs p) {
            p.signs().forEach(s -> all.add(List.of(new Text.Words(s.words()))));
        } else {
            inside(piece).forEach(group -> group.forEach(p -> all.addAll(texts(p))));
        }
        return all;
    }

    /** The groups of pieces that a piece holds: items, steps, contents. */
    static List<List<Piece>> inside(Piece piece) {
        if (piece instanceof Piece.Steps p) {
            return p.steps();
        } else if (piece instanceof Piece.Bullets p) {
            return p.items();
        } else if (piece instanceof Piece.Together p) {
            return List.of(p.inside());
        } else if (piece instanceof Piece.Note p) {
            return List.of(p.inside());
        } else if (piece instanceof Piece.Leaf p) {
            return List.of(p.inside());
        }
        return List.of();
    }

    static String bare(String words) {
        return words.replaceAll("[\\s\\u00A0\\u2009\\u200B\\u202F]", "");
    }
}
