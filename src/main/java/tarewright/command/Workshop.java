package tarewright.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import tarewright.document.Sheet;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.print.AuthorPictures;
import tarewright.procedure.check.Checks;
import tarewright.procedure.check.SafetyChecks;
import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.LabelPaper;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.declare.Term;
import tarewright.procedure.declare.TermReader;
import tarewright.procedure.resolve.ResolveFinding;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.procedure.syntax.SyntaxFinding;
import tarewright.setting.DayValue;
import tarewright.setting.Overrides;
import tarewright.safety.Rulebook;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;
import tarewright.tables.ReferenceTables;
import tarewright.term.Hash;
import tarewright.term.Lot;
import tarewright.term.Program;
import tarewright.text.Outside;
import tarewright.text.SourceText;
import tarewright.text.Spelling;
import tarewright.wording.FindingWords;

/** Takes a procedure's file through reading, resolving and checking. */
final class Workshop {
    /** A procedure is a few pages of text; more than this is something else. */
    static final long MOST_BYTES = 4L << 20;
    /** What is on the shelf, in a file of its own. */
    static final String STOCK = "stock.md";
    private static final int MOST_TOLD = 200;
    private static final String OWN_SUBSTANCES = "substances.csv";
    private static final String OWN_HAZARDS = "hazards.csv";

    private final Outside outside;
    private final Overrides overrides;
    private final boolean several;
    private final List<StockBlock> shelf;
    private final Optional<LabelPaper> labels;
    private final Set<DayValue> met = new LinkedHashSet<>();
    private final Set<String> known = FindingWords.in("en").ids();
    private final Map<String, CountryRules> countries = new HashMap<>();
    private final Map<String, Found<CountryRules>> hazards = new HashMap<>();

    Workshop(Outside outside, Overrides overrides) {
        this(outside, overrides, false, List.of(), Optional.empty());
    }

    private Workshop(Outside outside, Overrides overrides, boolean several, List<StockBlock> shelf, Optional<LabelPaper> labels) {
        this.outside = outside;
        this.overrides = overrides;
        this.several = several;
        this.shelf = List.copyOf(shelf);
        this.labels = labels;
    }

    /** For several procedures of one class: a value on the day goes to those that have its block. */
    Workshop ofSeveral(Overrides its, List<StockBlock> bottles, Optional<LabelPaper> paper) {
        return new Workshop(outside, its, true, bottles, paper);
    }

    /** The values on the day that a procedure had a block for. */
    Set<DayValue> met() {
        return Set.copyOf(met);
    }

    /** A term's file as it is declared. */
    Found<Term> term(InputFile file) {
        List<Finding> findings = new ArrayList<>();
        SourceText text = text(file, findings);
        Found<SourceFile> source = Reader.read(text);
        findings.addAll(source.findings());
        Found<Term> term = TermReader.read(source.value(), beside(file, findings), tables(file, findings));
        findings.addAll(term.findings());
        findings.sort(Comparator.comparing((Finding f) -> f.at().source() != text).thenComparing(f -> f.at().source().name()).thenComparingInt(f -> f.at().start()));
        return new Found<>(term.value(), findings);
    }

    /** The files of the term's folder that hold sections and stocks alone; {@code stock.md} is one of them whatever stands in it. */
    private List<SourceFile> beside(InputFile term, List<Finding> findings) {
        List<SourceFile> all = new ArrayList<>();
        for (Path path : besides(term)) {
            boolean stock = path.getFileName().toString().equals(STOCK);
            List<Finding> its = new ArrayList<>();
            Found<SourceFile> source = Reader.read(text(new InputFile(path, path.toString()), its));
            if (stock || TermReader.isBeside(source.value())) {
                findings.addAll(its);
                findings.addAll(source.findings());
                all.add(source.value());
            }
        }
        return all;
    }

    private List<Path> besides(InputFile term) {
        try {
            Path folder = Optional.ofNullable(term.path().getParent()).orElse(Path.of("."));
            return outside.list(folder).stream().filter(p -> p.getFileName().toString().endsWith(".md"))
                    .filter(p -> !p.getFileName().equals(term.path().getFileName())).sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private Overrides forThis(SourceFile source, String name) {
        if (!several) {
            return overrides;
        }
        List<DayValue> its = overrides.onTheDay().stream().filter(v -> DeclarationReader.has(source, name, v)).toList();
        met.addAll(its);
        return overrides.withOnTheDay(its);
    }

    /** A file as far as it could be resolved, with all that was found, in the order of the text. */
    Found<Resolved> resolve(InputFile file) {
        List<Finding> findings = new ArrayList<>();
        SourceText text = text(file, findings);
        Found<SourceFile> source = Reader.read(text);
        ReferenceTables tables = tables(file, findings);
        findings.addAll(source.findings());
        Found<SourceFile> pictured = AuthorPictures.read(source.value(), folder(file), outside);
        findings.addAll(pictured.findings());
        Found<Resolved> resolved = Resolver.resolve(file.name(), pictured.value(), forThis(source.value(), file.name()), shelf, labels, tables);
        findings.addAll(resolved.findings());
        // Dangers that only seem to come of what could not be read would hide the mistake itself; a figure that cannot be reckoned hides none.
        boolean whole = findings.stream().allMatch(f -> f.severity() != Severity.ERROR || f instanceof ResolveFinding);
        boolean anything = !resolved.value().quantities().isEmpty() || !resolved.value().reactions().isEmpty();
        findings.addAll(Checks.run(resolved.value()));
        resolved.value().procedure().settled().stream().flatMap(b -> b.finding().stream()).filter(id -> !known.contains(id.value()))
                .forEach(id -> findings.add(new UnknownSettled(id.value(), Spelling.near(id.value(), known), id.at())));
        findings.addAll(LanguageCheck.of(resolved.value()));
        if (whole && anything) {
            Found<CountryRules> hazardTables = hazards(file, resolved.value());
            findings.addAll(hazardTables.findings());
            findings.addAll(SafetyChecks.run(resolved.value(), hazardTables.value().rules()));
            findings.addAll(CountryCheck.of(resolved.value(), hazardTables.value()));
        }
        List<Finding> inOrder = new ArrayList<>(new LinkedHashSet<>(Checks.unanswered(resolved.value(), findings)));
        inOrder.sort(Comparator.comparing((Finding f) -> f.at().source() != text).thenComparingInt(f -> f.at().start()));
        return new Found<>(resolved.value(), told(inOrder));
    }

    /** Nobody mends more at one sitting; past the limit findings are counted. None of them is lost: the file still does not print. */
    private static List<Finding> told(List<Finding> all) {
        if (all.size() <= MOST_TOLD) {
            return all;
        }
        List<Finding> told = new ArrayList<>(all.subList(0, MOST_TOLD));
        List<Finding> rest = all.subList(MOST_TOLD, all.size());
        Finding worst = rest.stream().min(Comparator.comparing(Finding::severity)).orElseThrow();
        told.add(new SyntaxFinding.AndMore(MOST_TOLD, rest.size(), worst.severity(), worst.at()));
        return told;
    }

    /** The hazard tables for a procedure's country, with the teacher's own over them if such a file lies beside the procedure. */
    CountryRules country(InputFile file, Resolved procedure) {
        return hazards(file, procedure).value();
    }

    /** Read once for each folder and country, when they are first asked for. */
    private Found<CountryRules> hazards(InputFile file, Resolved procedure) {
        String code = procedure.setting().country();
        CountryRules packedRules = code.isEmpty() ? PackedTables.hazards() : countries.computeIfAbsent(code, HazardTables::of);
        Optional<Path> own = own(file, OWN_HAZARDS);
        return own.isEmpty() ? new Found<>(packedRules, List.of())
                : hazards.computeIfAbsent(code + "/" + own.get(), k -> over(packedRules, own.get()));
    }

    private Found<CountryRules> over(CountryRules packedRules, Path own) {
        try {
            String csv = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(outside.read(own, MOST_BYTES))).toString();
            Found<Rulebook> with = HazardTables.withOwn(packedRules.rules(), new SourceText(OWN_HAZARDS, csv));
            return new Found<>(new CountryRules(with.value(), packedRules.own()), with.findings());
        } catch (CharacterCodingException e) {
            return unusable(packedRules, Unreadable.NOT_UTF_8);
        } catch (Outside.TooLarge e) {
            return unusable(packedRules, Unreadable.TOO_LARGE);
        } catch (IOException e) {
            return unusable(packedRules, Unreadable.NO_ACCESS);
        }
    }

    private static Found<CountryRules> unusable(CountryRules packedRules, Unreadable why) {
        return new Found<>(packedRules, List.of(why.finding(new SourceText(OWN_HAZARDS, "").span(0, 0))));
    }

    /** What is printed of a procedure without errors. */
    Lot lot(InputFile file, Found<Resolved> found, Set<Sheet.Kind> kinds, boolean large, Program program) {
        return lot("", file, found, kinds, large, "", program, Optional.empty());
    }

    /** The same for a folder below the output folder. @param footer words for every footer */
    Lot lot(String folder, InputFile file, Found<Resolved> found, Set<Sheet.Kind> kinds, boolean large, String footer, Program program) {
        return lot(folder, file, found, kinds, large, footer, program, Optional.empty());
    }

    /** As above. @param seed makes the version another, and with it the supplied readings, which follow from the version code */
    Lot lot(String folder, InputFile file, Found<Resolved> found, Set<Sheet.Kind> kinds, boolean large, String footer, Program program, Optional<Long> seed) {
        Map<String, String> inputs = inputs(file, found.value(), templates(file));
        seed.ifPresent(n -> inputs.put("seed", Hash.of(n.toString())));
        List<Finding> warnings = found.findings().stream().filter(f -> f.severity() == Severity.WARNING).toList();
        return Lot.of(folder, found.value(), warnings, country(file, found.value()), kinds, inputs, footer, large, program.data());
    }

    /** A folder {@code templates} beside the procedure's folder goes before the packed templates. */
    static Path templates(InputFile input) {
        Path folder = folder(input);
        Path beside = folder.resolveSibling("templates");
        Path inside = folder.resolve("templates");
        return Files.isDirectory(inside) ? inside : beside;
    }

    private static Path folder(InputFile input) {
        return Optional.ofNullable(input.path().toAbsolutePath().normalize().getParent()).orElse(Path.of("."));
    }

    /** SHA-256 of each text and picture that goes into a print: the procedure, the teacher's own tables beside it, own templates. */
    private Map<String, String> inputs(InputFile file, Resolved procedure, Path templates) {
        Map<String, String> inputs = new TreeMap<>();
        inputs.put("procedure", Hash.of(procedure.procedure().source().text().content().replace("\r\n", "\n").replace('\r', '\n')));
        procedure.procedure().source().pictures().forEach((name, picture) -> inputs.put("picture/" + name, picture.sha256()));
        labels.ifPresent(l -> inputs.put("labels", l.toString()));
        procedure.procedure().stocks().forEach(s -> inputs.put("stock/" + s.name(), Hash.of(s.block().span().text())));
        for (String name : List.of(OWN_SUBSTANCES, OWN_HAZARDS)) {
            own(file, name).ifPresent(own -> inputs.put(name, hash(own)));
        }
        try {
            if (outside.isFolder(templates)) {
                outside.list(templates).forEach(t -> inputs.put("templates/" + t.getFileName(), hash(t)));
            }
        } catch (IOException e) {
            inputs.put("templates", "unreadable");
        }
        return inputs;
    }

    private String hash(Path file) {
        try {
            return Hash.of(outside.read(file, MOST_BYTES));
        } catch (IOException e) {
            return "unreadable";
        }
    }

    private Optional<Path> own(InputFile file, String name) {
        return Optional.ofNullable(file.path().toAbsolutePath().getParent()).map(p -> p.resolve(name)).filter(outside::isFile);
    }

    private SourceText text(InputFile file, List<Finding> findings) {
        try {
            byte[] bytes = outside.read(file.path(), MOST_BYTES);
            return new SourceText(file.shown(), StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException e) {
            return unreadable(file, findings, Unreadable.NOT_UTF_8);
        } catch (Outside.TooLarge e) {
            return unreadable(file, findings, Unreadable.TOO_LARGE);
        } catch (IOException e) {
            return unreadable(file, findings, Unreadable.NO_ACCESS);
        }
    }

    private static SourceText unreadable(InputFile file, List<Finding> findings, Unreadable why) {
        SourceText empty = new SourceText(file.shown(), "");
        findings.add(why.finding(empty.span(0, 0)));
        return empty;
    }

    /** The packed tables with the teacher's own substances over them, if such a file lies beside the procedure. */
    private ReferenceTables tables(InputFile file, List<Finding> findings) {
        Optional<Path> own = own(file, OWN_SUBSTANCES);
        if (own.isEmpty()) {
            return PackedTables.chemistry();
        }
        try {
            String csv = new String(outside.read(own.get(), MOST_BYTES), StandardCharsets.UTF_8);
            Found<ReferenceTables> with = PackedTables.chemistry().withOwn(csv, OWN_SUBSTANCES);
            findings.addAll(with.findings());
            return with.value();
        } catch (IOException e) {
            findings.add(Unreadable.NO_ACCESS.finding(new SourceText(OWN_SUBSTANCES, "").span(0, 0)));
            return PackedTables.chemistry();
        }
    }
}
