package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.BalanceResult;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Balancing;
import tarewright.chemistry.Equation;
import tarewright.chemistry.EquationResult;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Typed;
import tarewright.text.Span;

/** Reads {@code reaction} blocks: the equation is parsed and balanced, or the author's coefficients are checked. */
final class ReactionReader {
    private final FieldReader reader;

    ReactionReader(FieldReader reader) {
        this.reader = reader;
    }

    ReactionBlock read(TypedBlock block) {
        Fields fields = block.fields();
        reader.checkKeys("reaction", fields);
        if (block.equation().isEmpty()) {
            reader.note(new DeclareFinding.FieldMissing("reaction", "equation", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)", block.typeSpan()));
        }
        Optional<At<String>> limiting = reader.name(fields, "limiting");
        boolean varies = limiting.filter(l -> l.value().equals("varies")).isPresent();
        return new ReactionBlock(block, block.equation().flatMap(this::equation), goesTo(fields),
                fields.get("catalyst").map(Fields.Field::pieces).orElse(List.of()).stream().map(p -> new At<>(p.text(), p.span())).toList(),
                varies ? Optional.empty() : limiting, varies, reader.yes(fields, "shown only").orElse(false));
    }

    private Optional<At<Typed>> goesTo(Fields fields) {
        Optional<At<Typed>> share = reader.share(fields, "goes to");
        if (share.isPresent() && share.get().value().value() == 0) {
            reader.note(new DeclareFinding.YieldZero(share.get().at().text(), share.get().at()));
            return Optional.empty();
        }
        return share;
    }

    private Optional<BalancedEquation> equation(Piece written) {
        EquationResult result = Equation.parse(written.text());
        if (result instanceof EquationResult.Bad bad) {
            bad.troubles().forEach(t -> trouble(t.id(), t.from(), t.to(), t, written.span()));
            return Optional.empty();
        }
        BalanceResult balance = Balancing.complete(((EquationResult.Ok) result).equation());
        if (balance instanceof BalanceResult.Bad bad) {
            trouble(bad.trouble().id(), 0, written.text().length(), bad.trouble(), written.span());
        }
        return balance.value();
    }

    private void trouble(String id, int from, int to, Object trouble, Span in) {
        reader.note(new TroubleFinding(id, in.part(from, to), trouble));
    }
}
