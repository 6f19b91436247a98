package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Part;

/**
 * What is left in a pot: its products, gases apart, and whatever is not used up.
 *
 * @param parts with their strengths in the mixture taken as not known, so that nothing is missed
 */
public record PotLeft(ResolvedReaction reaction, PotAccount pot, List<Part> parts) {
    public PotLeft {
        parts = List.copyOf(parts);
    }

    /** For each pot of each reaction. */
    public static List<PotLeft> of(Resolved procedure, OnTheBench bench) {
        List<PotLeft> all = new ArrayList<>();
        for (ResolvedReaction reaction : procedure.reactions()) {
            reaction.pots().forEach(pot -> all.add(new PotLeft(reaction, pot, parts(procedure, reaction, pot, bench))));
        }
        return all;
    }

    private static List<Part> parts(Resolved procedure, ResolvedReaction reaction, PotAccount pot, OnTheBench bench) {
        Set<Part> parts = new LinkedHashSet<>();
        for (Made product : bench.made()) {
            Part part = product.verdict().matter().parts().get(0);
            boolean ofThis = reaction.block().equation().filter(e -> e.products().stream()
                    .anyMatch(t -> part.formula().filter(t.species().formula().plain()::equals).isPresent())).isPresent();
            if (ofThis && product.verdict().matter().form() != Form.GAS) {
                parts.add(new Part(part.substance(), part.formula(), Content.unstated()));
            }
        }
        pot.leftOver().forEach((block, left) -> {
            if (left.value() > 0 && !pot.limiting().contains(block)) {
                procedure.quantity(block).flatMap(q -> q.matter()).map(m -> Contents.part(m, Content.unstated()))
                        .ifPresent(parts::add);
            }
        });
        return new ArrayList<>(parts);
    }
}
