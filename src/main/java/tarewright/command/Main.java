package tarewright.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Where the program starts: finds the command, runs it, turns what it says into an exit status. */
@Command(name = "tarewright", sortOptions = false,
        description = {"Practical chemistry procedures, written once and printed for the class at hand.", "",
            "Without a command, every procedure in the folder `procedures` is printed into the folder `out`."},
        footer = {"", "Exit status: 0 printed, with warnings at most; 1 something must be mended first; 2 the command was not understood."})
public final class Main implements Runnable {
    private static final Set<String> NEED_TABLES = Set.of("print", "changes", "proof", "figures");
    static final int CLEAN = 0;
    static final int ERRORS = 1;
    static final int USAGE = 2;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;

    private Main() {
    }

    /** By their names, in the order in which help shows them. */
    private static Map<String, Supplier<Object>> commands() {
        Map<String, Supplier<Object>> all = new LinkedHashMap<>();
        all.put("print", PrintCommand::new);
        all.put("changes", ChangesCommand::new);
        all.put("proof", ProofCommand::new);
        all.put("figures", FiguresCommand::new);
        all.put("begin", BeginCommand::new);
        return all;
    }

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int status = run(arguments, out, err);
        out.flush();
        err.flush();
        if (status != CLEAN) {
            System.exit(status);
        }
    }

    /** Runs a command line and gives its exit status. */
    static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        List<String> typed = arguments.length == 0 ? List.of("print") : List.of(arguments);
        if (NEED_TABLES.contains(typed.get(0))) {
            PackedTables.begin();
        }
        CommandLine line = new CommandLine(new Main());
        // The options of the other commands are not looked at where one is named: that takes a quarter of the start.
        Map<String, Supplier<Object>> commands = commands();
        Set<String> wanted = commands.containsKey(typed.get(0)) ? Set.of(typed.get(0)) : commands.keySet();
        wanted.forEach(name -> line.addSubcommand(name, commands.get(name).get()));
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpAutoWidth(true);
        line.setExecutionExceptionHandler((problem, command, parsed) -> failed(problem, err));
        line.setParameterExceptionHandler((problem, given) -> {
            err.println("tarewright: " + problem.getMessage());
            err.println("See: tarewright " + (problem.getCommandLine().getCommandName().equals("tarewright") ? "" : problem.getCommandLine().getCommandName() + " ")
                    + "--help");
            return USAGE;
        });
        return line.execute(typed.toArray(String[]::new));
    }

    /** A mistake in the arguments is told in a line; anything else is our own mistake and says so, without a stack trace. */
    private static int failed(Exception problem, PrintWriter err) {
        if (problem instanceof Inputs.Usage) {
            err.println("tarewright: " + problem.getMessage());
            return USAGE;
        }
        err.println("tarewright: " + Remarks.ourMistake(problem, "Sheets that it did not come to stay as they were."));
        return ERRORS;
    }

    @Override
    public void run() {
        throw new Inputs.Usage("say what to do: print, changes, proof, figures or begin; `tarewright --help` tells more");
    }
}
