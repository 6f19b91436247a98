package tarewright.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tarewright.document.Sheet;
import tarewright.finding.Found;
import tarewright.procedure.resolve.Resolved;
import tarewright.term.Change;
import tarewright.term.Hash;
import tarewright.term.Lot;
import tarewright.term.LotRecord;
import tarewright.term.Program;
import tarewright.wording.FindingText;

/** {@code changes}: what would be printed now beside what was printed last, in words. Writes nothing. */
@Command(name = "changes", sortOptions = false, description = {"Says what would differ from the last print, before anything is copied.",
    "Without a file, every procedure that `print` would print."})
final class ChangesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Procedures (files that end in .md), or folders of them.")
    private List<Path> files = List.of();
    @Option(names = "--out", paramLabel = "FOLDER", defaultValue = "out", description = "Where the last print is (${DEFAULT-VALUE}).")
    private Path out = Path.of("out");
    @Option(names = "--against", paramLabel = "MANIFEST", description = "Another print to compare with: a file of its folder `manifest`, or the folder.")
    private Optional<Path> against = Optional.empty();
    @Mixin
    private SettingOptions setting = new SettingOptions();
    @Option(names = "--json", description = "As JSON, one object for each procedure.")
    private boolean json;
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "This help.")
    private boolean help;
    private final ChangesText text = new ChangesText();

    @Override
    public Integer call() throws Exception {
        PrintWriter console = spec.commandLine().getOut();
        FindingText words = FindingText.in("en");
        Disk disk = new Disk();
        Workshop workshop = new Workshop(disk, setting.overrides(words));
        Map<String, LotRecord> before = before();
        Set<String> seen = new HashSet<>();
        Program program = Program.running();
        boolean errors = false;
        for (InputFile file : new Inputs(disk).find(files.isEmpty() ? List.of(PrintCommand.usualInput(disk)) : files)) {
            seen.add(file.name());
            Found<Resolved> found = workshop.resolve(file);
            if (found.hasErrors()) {
                errors = true;
                found.findings().forEach(f -> spec.commandLine().getErr().println(words.full(f)));
                say(console, file.name(), "error", text.say("head.bad", "name", file.name()), List.of(), Map.of());
            } else {
                compare(console, Optional.ofNullable(before.get(file.name())), workshop.lot(file, found, EnumSet.of(Sheet.Kind.HANDOUT), false, program));
            }
        }
        if (files.isEmpty()) {
            for (LotRecord gone : before.values()) {
                if (!seen.contains(gone.procedure())) {
                    say(console, gone.procedure(), "gone", text.say("head.gone", "name", gone.procedure(), "version", gone.version()), List.of(), Map.of());
                }
            }
        }
        return errors ? Main.ERRORS : Main.CLEAN;
    }

    private void compare(PrintWriter console, Optional<LotRecord> before, Lot now) throws JsonProcessingException {
        if (before.isEmpty()) {
            say(console, now.name(), "new", text.say("head.new", "name", now.name(), "version", now.version()), List.of(), Map.of("version", now.version()));
            return;
        }
        LotRecord old = before.get();
        boolean same = old.version().equals(now.version());
        List<Change> changes = Change.between(old.figures(), now.facts());
        List<String> lines = new ArrayList<>(text.lines(changes));
        List<String> inputs = differing(old, now);
        if (!same && changes.isEmpty()) {
            lines.add("  " + text.say("inputs", "inputs", inputs.isEmpty() ? text.say("inputs.program") : String.join(", ", inputs)));
        }
        List<String> altered = against.isPresent() ? List.of() : altered(old);
        if (!altered.isEmpty()) {
            lines.add("  " + text.say("altered", "files", String.join(", ", altered)));
        }
        String key = same ? "head.same" : changes.isEmpty() ? "head.untouched" : "head.moved";
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("before", old.version());
        more.put("version", now.version());
        more.put("inputs", inputs);
        more.put("altered", altered);
        more.put("changes", changes);
        say(console, now.name(), same ? "unchanged" : "changed", text.say(key, "name", now.name(), "before", old.version(), "version", now.version()), lines, more);
    }

    private void say(PrintWriter console, String name, String state, String head, List<String> lines, Map<String, Object> more) throws JsonProcessingException {
        if (json) {
            Map<String, Object> node = new LinkedHashMap<>();
            node.put("procedure", name);
            node.put("state", state);
            node.putAll(more);
            console.println(new ObjectMapper().writeValueAsString(node));
        } else {
            console.println(head);
            lines.forEach(console::println);
        }
    }

    private static List<String> differing(LotRecord old, Lot now) {
        Set<String> names = new TreeSet<>(old.inputs().keySet());
        names.addAll(now.inputs().keySet());
        return names.stream().filter(n -> !String.valueOf(old.inputs().get(n)).equals(String.valueOf(now.inputs().get(n)))).toList();
    }

    private List<String> altered(LotRecord old) {
        return old.files().entrySet().stream().filter(f -> {
            try {
                return !Hash.of(Files.readAllBytes(out.resolve(old.section()).resolve(f.getKey()))).equals(f.getValue().sha256());
            } catch (IOException e) {
                return true;
            }
        }).map(Map.Entry::getKey).toList();
    }

    private Map<String, LotRecord> before() throws IOException {
        Path from = against.orElse(out);
        if (against.isPresent() && !Files.exists(from)) {
            throw new Inputs.Usage("there is no manifest `" + from + "`");
        }
        Map<String, LotRecord> all = new TreeMap<>();
        Path folder = Files.isDirectory(from.resolve("manifest")) ? from.resolve("manifest") : from;
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(f -> f.toString().endsWith(".json")).forEach(f -> LotRecord.read(f).ifPresent(r -> all.put(r.procedure(), r)));
            }
        } else if (Files.isRegularFile(folder)) {
            LotRecord one = LotRecord.read(folder).orElseThrow(() -> new Inputs.Usage("`" + folder + "` is no manifest"));
            all.put(one.procedure(), one);
        }
        return all;
    }
}
