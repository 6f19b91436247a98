package tarewright.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.declare.Term;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.Resolved;
import tarewright.wording.FindingText;

/** {@code figures}: every resolved figure as JSON Lines, one object for each file, in the order given. */
@Command(name = "figures", sortOptions = false, description = "Every worked-out figure as JSON, one line for each file, for other programs.")
final class FiguresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Option(names = "--term", paramLabel = "FILE", description = "A term: one line for each section and procedure.")
    private Optional<Path> term = Optional.empty();
    @Mixin
    private SettingOptions setting = new SettingOptions();
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        FindingText words = FindingText.in("en");
        Disk disk = new Disk();
        boolean errors = false;
        if (term.isPresent() != files.isEmpty()) {
            throw new Inputs.Usage("say which procedures, or which term with --term FILE");
        }
        if (term.isPresent()) {
            TermWork work = TermWork.of(term.get(), setting.overrides(words), disk);
            errors = TermWork.hasErrors(work.findings());
            List<Finding> its = new ArrayList<>();
            for (Term.Section section : work.sections(List.of())) {
                for (TermWork.Each each : work.work(section, its)) {
                    out.println(line(each.workshop(), each.input(), each.found(), words));
                    errors |= each.found().hasErrors();
                }
            }
            errors |= TermWork.hasErrors(its);
        }
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        for (InputFile file : files.isEmpty() ? List.<InputFile>of() : new Inputs(disk).find(files)) {
            Found<Resolved> found = workshop.resolve(file);
            out.println(line(workshop, file, found, words));
            errors |= found.hasErrors();
        }
        return errors ? Main.ERRORS : Main.CLEAN;
    }

    private static String line(Workshop workshop, InputFile file, Found<Resolved> found, FindingText words) {
        ObjectNode node = FiguresJson.of(file, found.value());
        if (!found.value().setting().section().isEmpty()) {
            node.put("section", found.value().setting().section());
        }
        Recipes recipes = Recipes.of(found.value(), List.of());
        RecipesJson.into(node, recipes);
        BenchSafety safety = BenchSafety.of(found.value(), workshop.country(file, found.value()).rules());
        PrepJson.into(node, recipes, Supplies.of(found.value(), safety.bench(), recipes));
        SafetyJson.into(node, safety);
        node.putPOJO("findings", FindingsJson.list(found.findings(), words));
        return JsonLine.of(node);
    }
}
