package tarewright.command;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Resolved;
import tarewright.text.Span;
import tarewright.wording.DocumentWords;

/** Tells where the documents have no words in the language that a procedure, or a print, asks for. */
final class LanguageCheck {
    private LanguageCheck() {
    }

    static List<Finding> of(Resolved procedure) {
        String language = procedure.setting().language();
        if (DocumentWords.known(language)) {
            return List.of();
        }
        Optional<Span> written = procedure.procedure().front().language().filter(l -> l.value().equals(language)).map(l -> l.at());
        return List.of(new LanguageNotKnown(language, DocumentWords.languages(), written.orElseGet(() -> procedure.procedure().source().text().span(0, 0))));
    }

    /** No words in this language: the documents speak English. @param known codes of the languages that have words */
    record LanguageNotKnown(String language, List<String> known, Span at) implements Finding {
        LanguageNotKnown {
            known = List.copyOf(known);
        }

        @Override
        public String id() {
            return "language-not-known";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }
}
