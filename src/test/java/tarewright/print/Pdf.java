package tarewright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What a printed file holds, read back with PDFBox. */
final class Pdf {
    private Pdf() {
    }

    /** A line of print: its words and where it stands, in points from the left and the top edge. */
    record Line(int page, float left, float right, float baseline, float size, String words) {
    }

    static PDDocument open(Printed printed) {
        try {
            return Loader.loadPDF(printed.pdf());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words of each page, with spaces of every kind as plain ones. */
    static List<String> pages(Printed printed) {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = open(printed)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(plain(stripper.getText(document)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pages;
    }

    /** All letters in the order of the file, without any space. */
    static String letters(Printed printed) {
        try (PDDocument document = open(printed)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00A0\\u2009\\u200B\\u202F]", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Line> lines(Printed printed) {
        List<Line> lines = new ArrayList<>();
        try (PDDocument document = open(printed)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> at) {
                    TextPosition first = at.get(0);
                    TextPosition last = at.get(at.size() - 1);
                    lines.add(new Line(getCurrentPageNo(), first.getXDirAdj(), last.getXDirAdj() + last.getWidthDirAdj(),
                            first.getYDirAdj(),
                            first.getFontSizeInPt(), plain(text)));
                }
            };
            stripper.setSortByPosition(true);
            stripper.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lines;
    }

    /** @return the number of the first of these pages that holds the words, from 1 */
    static int pageOf(List<String> pages, String words) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).contains(words)) {
                return i + 1;
            }
        }
        throw new AssertionError("not printed: " + words);
    }

    static String plain(String text) {
        return text.replaceAll("[\\u00A0\\u2009\\u202F]", " ").replaceAll("[ \\t]*\\R", "\n");
    }
}
