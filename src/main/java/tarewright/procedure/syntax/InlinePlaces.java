package tarewright.procedure.syntax;

import org.commonmark.node.SourceSpan;

/** Where running text stands in the file. */
interface InlinePlaces {
    int start(SourceSpan span);

    int end(SourceSpan span);
}
