package tarewright.procedure.check;

import java.util.Optional;
import java.util.stream.Stream;
import tarewright.procedure.bench.BenchSafety;
import tarewright.safety.Matter;
import tarewright.text.Span;

/** Where the author wrote what a matter on the bench is. */
final class Where {
    private Where() {
    }

    static Span of(BenchSafety safety, Matter matter) {
        Stream<Span> taken = safety.bench().taken().stream().filter(t -> t.verdict().matter() == matter)
                .map(t -> t.source().block().block().nameSpan());
        Stream<Span> made = safety.bench().made().stream().filter(m -> m.verdict().matter() == matter)
                .map(m -> m.block().map(b -> b.block().block().nameSpan()).orElse(m.reaction().block().block().nameSpan()));
        Stream<Span> stock = safety.stocks().stream().filter(s -> s.verdict().matter() == matter)
                .flatMap(s -> Stream.concat(s.makes().stream().map(m -> m.block().madeFrom().orElseThrow().at()),
                        safety.procedure().procedure().stock(s.name()).stream().map(b -> b.block().nameSpan())));
        Optional<Span> first = Stream.of(taken, made, stock).flatMap(s -> s).findFirst();
        return first.orElseGet(() -> safety.procedure().procedure().source().text().span(0, 0));
    }

    static boolean isStock(BenchSafety safety, Matter matter) {
        return safety.stocks().stream().anyMatch(s -> s.verdict().matter() == matter);
    }
}
