package tarewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/**
 * Printers that share the work of one set of documents, each on a thread of its own, since a printer is for one thread. The
 * documents come out in their order and with the same bytes, however many printers there are.
 */
public final class Presses {
    private final CompletableFuture<PdfPrinter> first;
    private final Optional<Supplier<PdfPrinter>> more;
    private Optional<CompletableFuture<PdfPrinter>> second = Optional.empty();

    private Presses(CompletableFuture<PdfPrinter> first, Optional<Supplier<PdfPrinter>> more) {
        this.first = first;
        this.more = more;
    }

    /** One printer, on the thread that prints. */
    public static Presses of(PdfPrinter printer) {
        return new Presses(CompletableFuture.completedFuture(printer), Optional.empty());
    }

    /**
     * Two printers where there are two cores. The first is got ready from now on, beside whatever the caller does meanwhile; the
     * second when there is something for it to print.
     */
    public static Presses begun(Supplier<PdfPrinter> printer) {
        boolean alone = Runtime.getRuntime().availableProcessors() < 2;
        return new Presses(beside(printer), alone ? Optional.empty() : Optional.of(printer));
    }

    /**
     * Does each piece of work by the next printer that is free.
     *
     * @return what came of each, in the order of the pieces
     * @throws RuntimeException the one that the first of the pieces that failed threw
     */
    public <J, R> List<R> each(List<J> pieces, BiFunction<PdfPrinter, J, R> work) {
        List<CompletableFuture<R>> results = new ArrayList<>();
        pieces.forEach(p -> results.add(new CompletableFuture<>()));
        AtomicInteger next = new AtomicInteger();
        if (pieces.size() > 1 && more.isPresent()) {
            second = second.or(() -> Optional.of(beside(more.get())));
            second.get().whenCompleteAsync((printer, failed) -> {
                // A printer that cannot be made is told of by the first, which is made alike and then does all the work.
                if (failed == null) {
                    work(printer, pieces, work, results, next);
                }
            }, Presses::daemon);
        }
        work(joined(first), pieces, work, results, next);
        List<R> all = new ArrayList<>();
        results.forEach(r -> all.add(joined(r)));
        return all;
    }

    private static <J, R> void work(PdfPrinter printer, List<J> pieces, BiFunction<PdfPrinter, J, R> work, List<CompletableFuture<R>> results,
            AtomicInteger next) {
        for (int i = next.getAndIncrement(); i < pieces.size(); i = next.getAndIncrement()) {
            try {
                results.get(i).complete(work.apply(printer, pieces.get(i)));
            } catch (RuntimeException | Error e) {
                results.get(i).completeExceptionally(e);
            }
        }
    }

    private static CompletableFuture<PdfPrinter> beside(Supplier<PdfPrinter> printer) {
        return CompletableFuture.supplyAsync(printer, Presses::daemon);
    }

    /** The program ends without it, where a procedure has an error. */
    private static void daemon(Runnable task) {
        Thread thread = new Thread(task, "press");
        thread.setDaemon(true);
        thread.start();
    }

    private static <T> T joined(CompletableFuture<T> future) {
        try {
            return future.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException ours) {
                throw ours;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e;
        }
    }
}
