package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Turns the running text of one block into {@link Inline}s, neighbouring words made one. */
final class InlineReader {
    private final InlinePlaces places;
    private final SourceText source;
    private final Findings findings;
    private final StrayBraces braces;
    /** Where the last piece that has a place ended. */
    private int position;
    private boolean htmlTold;

    InlineReader(InlinePlaces places, SourceText source, int start, StrayBraces braces, Findings findings) {
        this.places = places;
        this.source = source;
        this.position = start;
        this.braces = braces;
        this.findings = findings;
    }

    List<Inline> read(Node parent) {
        Run run = new Run();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof SoftLineBreak) {
                run.lineBreak();
                continue;
            }
            Span span = spanOf(node);
            if (node instanceof Text text) {
                run.words(text.getLiteral(), span);
            } else if (node instanceof HtmlInline html) {
                tellHtml(html.getLiteral(), span);
                run.words(html.getLiteral(), span);
            } else if (node instanceof ReferenceParser.Stray stray) {
                braces.found(stray.brace(), span);
                run.words(String.valueOf(stray.brace()), span);
            } else if (node instanceof CommentParser.Unclosed) {
                findings.add(new SyntaxFinding.CommentNotClosed(span));
                run.words(span.text(), span);
            } else if (node instanceof CommentParser.Comment) {
                run.comment(span);
            } else if (node instanceof ReferenceParser.Braced braced && Spaces.single(braced.inside()).isEmpty()) {
                findings.add(new SyntaxFinding.ReferenceEmpty(span));
                run.words("{" + braced.inside().replace('\n', ' ') + "}", span);
            } else {
                run.add(nested(node, span), span);
            }
            position = Math.max(position, span.end());
        }
        return run.finish();
    }

    private Inline nested(Node node, Span span) {
        if (node instanceof ReferenceParser.Braced braced) {
            return new Inline.Reference(Spaces.single(braced.inside()), span);
        }
        if (node instanceof Code code) {
            return new Inline.Code(code.getLiteral(), span);
        }
        if (node instanceof HardLineBreak) {
            return new Inline.HardBreak(span);
        }
        if (node instanceof Emphasis) {
            return new Inline.Emphasis(inside(node, span, 1), span);
        }
        if (node instanceof StrongEmphasis) {
            return new Inline.Strong(inside(node, span, 2), span);
        }
        if (node instanceof Link link) {
            return new Inline.Link(inside(node, span, 1), link.getDestination(), span);
        }
        if (node instanceof Image image) {
            List<Inline> inside = inside(node, span, 2);
            return new Inline.Picture(plain(inside), inside, image.getDestination(), span);
        }
        throw new IllegalStateException("no such inline: " + node.getClass());
    }

    /** @param mark how long the mark is that opens it */
    private List<Inline> inside(Node node, Span span, int mark) {
        position = Math.min(span.start() + mark, span.end());
        return read(node);
    }

    /** The words of running text without its marks, a reference in its braces. */
    private static String plain(List<Inline> inlines) {
        StringBuilder words = new StringBuilder();
        for (Inline top : inlines) {
            Inline.walk(top, inline -> {
                if (inline instanceof Inline.Words w) {
                    words.append(w.text());
                } else if (inline instanceof Inline.Code c) {
                    words.append(c.text());
                } else if (inline instanceof Inline.Reference r) {
                    words.append('{').append(r.text()).append('}');
                } else if (inline instanceof Inline.HardBreak) {
                    words.append(' ');
                }
            });
        }
        return words.toString();
    }

    private void tellHtml(String html, Span span) {
        if (!htmlTold && !html.startsWith("</")) {
            findings.add(new SyntaxFinding.HtmlShownAsText(Spaces.single(html), span));
            htmlTold = true;
        }
    }

    private static int spacesAtEnd(String text) {
        int spaces = 0;
        while (spaces < text.length() && Spaces.isSpace(text.charAt(text.length() - 1 - spaces))) {
            spaces++;
        }
        return spaces;
    }

    private Span spanOf(Node node) {
        List<SourceSpan> spans = node.getSourceSpans();
        if (spans.isEmpty()) {
            return source.span(position, position);
        }
        int start = places.start(spans.get(0));
        return source.span(start, Math.max(start, places.end(spans.get(spans.size() - 1))));
    }

    /** The inlines of one parent so far, with the words that are still being put together. */
    private final class Run {
        private final List<Inline> inlines = new ArrayList<>();
        private final StringBuilder words = new StringBuilder();
        private int from = -1;
        private int to;
        /** Nothing, or a space with a comment behind it: one more space would be one too many. */
        private boolean spaceIsEnough;

        void words(String text, Span span) {
            words(text, span, endOf(text, span));
        }

        private void words(String text, Span span, int end) {
            String more = spaceIsEnough ? text.stripLeading() : text;
            int skipped = text.length() - more.length();
            if (more.isEmpty()) {
                return;
            }
            spaceIsEnough = false;
            if (from < 0) {
                from = span.start() + skipped;
            }
            words.append(more);
            to = end;
        }

        /** The end of words whose place may hold spaces behind them that a line end made void. */
        private int endOf(String text, Span span) {
            int tooMany = spacesAtEnd(span.text()) - spacesAtEnd(text);
            return span.end() - Math.max(tooMany, 0);
        }

        void lineBreak() {
            int line = source.lineAt(position);
            int next = line < source.lines() ? source.startOfLine(line + 1) : position;
            words(" ", source.span(position, next), next);
            position = next;
        }

        void comment(Span span) {
            boolean atStart = inlines.isEmpty() && words.length() == 0;
            boolean behindSpace = words.length() > 0 && Spaces.isSpace(words.charAt(words.length() - 1));
            spaceIsEnough = spaceIsEnough || atStart || behindSpace;
            flush();
        }

        void add(Inline inline, Span span) {
            flush();
            inlines.add(inline);
            spaceIsEnough = false;
        }

        private void flush() {
            if (from >= 0) {
                inlines.add(new Inline.Words(words.toString(), source.span(from, to)));
            }
            words.setLength(0);
            from = -1;
        }

        List<Inline> finish() {
            flush();
            int last = inlines.size() - 1;
            if (spaceIsEnough && last >= 0 && inlines.get(last) instanceof Inline.Words words) {
                inlines.remove(last);
                String text = words.text().substring(0, words.text().length() - spacesAtEnd(words.text()));
                if (!text.isEmpty()) {
                    inlines.add(new Inline.Words(text, source.span(words.span().start(), endOf(text, words.span()))));
                }
            }
            return inlines;
        }
    }
}
