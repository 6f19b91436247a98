package tarewright.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tarewright.finding.Found;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.Resolved;
import tarewright.wording.FindingText;

/** {@code figures}: every resolved figure as JSON Lines, one object for each file, in the order given. */
@Command(name = "figures", sortOptions = false, description = "Every worked-out figure as JSON, one line for each file, for other programs.")
final class FiguresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "1..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Mixin
    private SettingOptions setting = new SettingOptions();
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        FindingText words = FindingText.in("en");
        Disk disk = new Disk();
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        ObjectMapper mapper = new ObjectMapper();
        boolean errors = false;
        for (InputFile file : new Inputs(disk).find(files)) {
            Found<Resolved> found = workshop.resolve(file);
            ObjectNode node = FiguresJson.of(file, found.value());
            Recipes recipes = Recipes.of(found.value(), List.of());
            RecipesJson.into(node, recipes);
            BenchSafety safety = BenchSafety.of(found.value(), workshop.country(file, found.value()).rules());
            PrepJson.into(node, recipes, Supplies.of(found.value(), safety.bench(), recipes));
            SafetyJson.into(node, safety);
            node.set("findings", mapper.valueToTree(FindingsJson.list(found.findings(), words)));
            out.println(mapper.writeValueAsString(node));
            errors |= found.hasErrors();
        }
        return errors ? Main.ERRORS : Main.CLEAN;
    }
}
