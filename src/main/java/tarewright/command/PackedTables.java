package tarewright.command;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;

/**
 * The tables that come with the program, read once, on two other threads, from the moment this class is first touched: reading them takes longer than anything else that a single procedure needs, so it begins before
 * the arguments are looked at. The threads do not keep the program from ending.
 */
final class PackedTables {
    private static final CompletableFuture<ReferenceTables> CHEMISTRY = begun("chemistry", Tables::load);
    private static final CompletableFuture<CountryRules> HAZARDS = begun("hazards", HazardTables::usual);

    private PackedTables() {
    }

    /** Begins to read. */
    static void begin() {
        // What there is to do was done when the class was initialised.
    }

    static ReferenceTables chemistry() {
        return CHEMISTRY.join();
    }

    /** The rules where a procedure names no country. */
    static CountryRules hazards() {
        return HAZARDS.join();
    }

    private static <T> CompletableFuture<T> begun(String name, Supplier<T> tables) {
        return CompletableFuture.supplyAsync(tables, task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            thread.start();
        });
    }
}
