package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.safety.NearLimit;
import tarewright.safety.Remark;
import tarewright.safety.Statement;
import tarewright.safety.Unknown;
import tarewright.safety.Verdict;

/** The hazards of what is on the bench, as boxes. Nothing that the classification says is left out. */
final class Hazards {
    private final Draft draft;

    Hazards(Draft draft) {
        this.draft = draft;
    }

    /** One box, with its strength and its formula as details. @param more details of this document's own, such as an amount */
    Piece.Hazard box(Bottle bottle, List<Text> more, boolean remarks) {
        Verdict verdict = bottle.verdict();
        List<String> statements = new ArrayList<>(Stream.concat(verdict.statements().stream(), verdict.supplemental().stream())
                .map(this::sentence).toList());
        if (bottle.solventUnknown()) {
            statements.add(0, draft.say("hazard.indicator"));
        }
        List<Text> detail = Typeset.joined(Stream.of(bottle.strength(), bottle.formula(), more).filter(d -> !d.isEmpty())
                .toList(), "; ");
        return new Piece.Hazard(bottle.name(), detail, verdict.pictograms(), signalWord(verdict), statements,
                basis(bottle, remarks), verdict.known() && !bottle.solventUnknown());
    }

    String signalWord(Verdict verdict) {
        return verdict.signalWord().map(w -> draft.say("signal." + w.name().toLowerCase(Locale.ROOT))).orElse("");
    }

    /** The code and the standard's words. */
    private String sentence(Statement statement) {
        return draft.say("hazard.statement", "code", statement.code(), "text", statement.printed());
    }

    private String basis(Bottle bottle, boolean remarks) {
        List<String> said = new ArrayList<>();
        Verdict verdict = bottle.verdict();
        if (verdict instanceof Unknown) {
            said.add(unknown(bottle));
        }
        if (remarks) {
            String key = !verdict.known() ? "hazard.basis-rest" : verdict.harmless() ? "hazard.basis-harmless" : "hazard.basis";
            Optional.of(key).filter(k -> !bottle.solventUnknown()).ifPresent(k -> said.add(draft.say(k, "rules", draft.tables().phrase(verdict.ruleSet().title()))));
            verdict.remarks().forEach(r -> said.add(remark(r, bottle)));
            if (!bottle.masked()) {
                verdict.nearLimits().stream().filter(NearLimit::stricterTaken)
                        .forEach(n -> said.add(draft.say("hazard.near-limit", "code", n.hazard().code())));
            }
        }
        return String.join(" ", said);
    }

    /** That something in it is not known, and what. */
    String unknown(Bottle bottle) {
        String parts = bottle.masked() || !(bottle.verdict() instanceof Unknown) ? Plain.of(bottle.name())
                : ((Unknown) bottle.verdict()).parts().stream().map(draft::called).collect(Collectors.joining(", "));
        return draft.say("hazard.unknown", "parts", parts);
    }

    private String remark(Remark remark, Bottle bottle) {
        String key = "remark." + remark.about().name().toLowerCase(Locale.ROOT).replace('_', '-');
        // Where a hydrate is to be found out, the row that was taken for its dry salt would name it.
        boolean disguised = draft.procedure().quantities().stream().anyMatch(q -> q.block().shownAs().isPresent());
        String substance = bottle.masked() || disguised ? Plain.of(bottle.name()) : draft.called(remark.details().get(0));
        String more = remark.details().stream().skip(1).map(draft.tables()::phrase).map(draft::called).collect(Collectors.joining(", "));
        boolean restricted = remark.about() == Remark.About.RESTRICTED;
        return draft.say(key, "substance", substance, "more", restricted
                ? draft.say("restriction." + more.toLowerCase(Locale.ROOT).replace('_', '-')) : more);
    }

    /** The names of what is known and not classified, in one sentence; nothing if there is none. */
    List<Piece> harmless(List<Bottle> bottles) {
        List<List<Text>> names = bottles.stream().filter(b -> b.verdict().harmless() && !b.solventUnknown()).map(this::named).toList();
        List<List<Text>> indicators = bottles.stream().filter(b -> b.verdict().harmless() && b.solventUnknown()).map(this::named).toList();
        List<List<Text>> said = new ArrayList<>();
        if (!names.isEmpty()) {
            said.add(draft.compose("hazard.harmless", Map.of("names", Typeset.joined(names, "; "))));
        }
        if (!indicators.isEmpty()) {
            said.add(draft.compose("hazard.indicator-named", Map.of("names", Typeset.joined(indicators, "; "))));
        }
        return said.isEmpty() ? List.of() : List.of(new Piece.Paragraph(Typeset.joined(said, " ")));
    }

    private List<Text> named(Bottle bottle) {
        return bottle.strength().isEmpty() ? bottle.name() : draft.compose("label.with-strength", Map.of("name", bottle.name(), "strength", bottle.strength()));
    }
}
