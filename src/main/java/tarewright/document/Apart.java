package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.safety.Clash;
import tarewright.safety.Incompatible;
import tarewright.safety.Rulebook;
import tarewright.safety.Together;

/** What must not meet of what is on the bench, other than what the procedure means to bring together. */
final class Apart {
    private final Draft draft;

    Apart(Draft draft) {
        this.draft = draft;
    }

    List<Piece> pieces(Bench bench, Rulebook rules) {
        List<Clash> clashes = new Incompatible(rules)
                .among(bench.bottles().stream().map(b -> b.verdict().matter()).toList(), Set.of(), intended(bench));
        List<List<Piece>> items = clashes.stream().map(c -> List.<Piece>of(new Piece.Paragraph(Text.words(sentence(c)))))
                .distinct().toList();
        return items.isEmpty() ? List.of() : List.of(draft.heading(2, "heading.apart"), new Piece.Bullets(items));
    }

    private String sentence(Clash clash) {
        boolean within = clash.first() == clash.second();
        return draft.say(within ? "apart.within" : "apart.pair", "first", clash.first().name(), "second", clash.second().name(),
                "how", draft.say("apart." + clash.severity().name().toLowerCase(Locale.ROOT).replace('_', '-')),
                "hazard", clash.rule().hazard(), "products", clash.rule().products(), "advice", clash.rule().advice());
    }

    private List<Together> intended(Bench bench) {
        List<Together> pairs = new ArrayList<>();
        for (ResolvedReaction reaction : draft.procedure().reactions()) {
            for (PotAccount pot : reaction.pots()) {
                List<String> blocks = pot.reactants().stream().flatMap(r -> r.blocks().stream()).toList();
                List<Bottle> in = bench.bottles().stream().filter(b -> b.uses().stream().anyMatch(u -> blocks.contains(u.name())))
                        .toList();
                for (Bottle one : in) {
                    in.stream().filter(other -> other != one)
                            .map(other -> new Together(one.verdict().matter().name(), other.verdict().matter().name()))
                            .forEach(pairs::add);
                }
            }
        }
        return pairs;
    }
}
