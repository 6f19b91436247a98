package tarewright.procedure.declare;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tarewright.finding.Found;
import tarewright.procedure.declare.Term.Copies;
import tarewright.procedure.declare.Term.Entry;
import tarewright.procedure.declare.Term.Section;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.SourceFile;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.setting.Setting;
import tarewright.tables.ReferenceTables;
import tarewright.text.Span;

/** Reads a term's file. Never throws on what an author wrote; a section with a mistake in it is marked, so that the others can go on. */
public final class TermReader {
    /** More groups than any class has are a slip of the hand. */
    static final int MOST_GROUPS = 500;
    private static final List<String> BLOCKS = List.of("section", "stock");
    private static final Pattern ON_A_DAY = Pattern.compile("(.+?)\\s+on\\s+([0-9]{4}-[0-9]{2}-[0-9]{2})");
    private static final List<String> DOCUMENTS = List.of("handout", "key", "safety", "prep", "labels");

    private final FieldReader reader;
    private final SourceFile source;
    private final List<SourceFile> beside;
    private final ReferenceTables tables;

    private TermReader(SourceFile source, List<SourceFile> beside, ReferenceTables tables) {
        this.source = source;
        this.beside = beside;
        this.tables = tables;
        this.reader = new FieldReader(tables);
    }

    /** Whether a file is a term's: its front matter says so. */
    public static boolean isTerm(SourceFile source) {
        return source.front().has("term");
    }

    /** Whether a file holds blocks of a term and nothing of a procedure, so that it is read with the terms beside it. */
    public static boolean isBeside(SourceFile source) {
        return !source.blocks().isEmpty() && !source.front().has("term") && !source.front().has("title")
                && source.blocks().stream().allMatch(b -> BLOCKS.contains(b.type()));
    }

    /** A term of one file. */
    public static Found<Term> read(SourceFile source, ReferenceTables tables) {
        return read(source, List.of(), tables);
    }

    /** The term, and what is wrong with its fields. @param beside files of their own with sections and stocks of it */
    public static Found<Term> read(SourceFile source, List<SourceFile> beside, ReferenceTables tables) {
        TermReader all = new TermReader(source, beside, tables);
        Term term = all.term();
        return new Found<>(term, all.reader.findings());
    }

    private Term term() {
        Fields front = source.front();
        reader.checkKeys(Vocabulary.TERM, front);
        Optional<At<String>> title = reader.name(front, "term");
        if (!front.has("term")) {
            reader.note(new DeclareFinding.FieldMissing(Vocabulary.TERM, "term", "term: Spring 2041", source.frontSpan().part(0, 3)));
        }
        beside.forEach(file -> reader.checkKeys(Vocabulary.BESIDE, file.front()));
        // A shelf serves procedures in any language.
        boolean bottles = files().flatMap(file -> file.blocks().stream()).anyMatch(b -> b.type().equals("stock"));
        ReferenceTables named = bottles ? tables.inEveryLanguage() : tables;
        List<StockBlock> stocks = files().flatMap(file -> {
            Found<List<StockBlock>> its = StockReader.read(file, named);
            its.findings().forEach(reader::note);
            return its.value().stream();
        }).toList();
        files().flatMap(file -> file.blocks().stream()).filter(b -> !BLOCKS.contains(b.type()))
                .forEach(b -> reader.note(new DeclareFinding.NotInATerm(b.type(), b.typeSpan())));
        namedTwice();
        return new Term(title, reader.words(front, "school").orElse(""),
                reader.oneOf(front, "paper", List.of("a4", "letter")).map(p -> p.toUpperCase(Locale.ROOT)), reader.share(front, "spare"),
                pieces(front, "documents").stream().flatMap(this::document).toList(), entries(front), copies(front),
                reader.words(front, "language"), reader.words(front, "country"),
                files().flatMap(file -> file.blocks().stream()).filter(b -> b.type().equals("section")).map(this::section).toList(), stocks,
                LabelPaperReader.read(pieces(front, "labels"), reader::note), versions(front));
    }

    private Stream<SourceFile> files() {
        return Stream.concat(Stream.of(source), beside.stream());
    }

    /** Within one file the syntax tells it. */
    private void namedTwice() {
        Map<String, TypedBlock> first = new LinkedHashMap<>();
        for (SourceFile file : files().toList()) {
            for (TypedBlock block : file.blocks()) {
                TypedBlock earlier = first.putIfAbsent(block.type() + " " + block.name(), block);
                if (earlier != null && earlier.nameSpan().source() != block.nameSpan().source()) {
                    Span there = earlier.nameSpan();
                    reader.note(new DeclareFinding.NamedInTwoFiles(block.type(), block.name(), there.source().name() + ":" + there.line(), block.nameSpan(), there));
                }
            }
        }
    }

    /** {@code hydrogen-from-magnesium}, {@code hydrogen-from-magnesium on 2041-02-04}. */
    private List<Entry> entries(Fields fields) {
        return pieces(fields, "procedures").stream().map(piece -> {
            Matcher onADay = ON_A_DAY.matcher(piece.text());
            return onADay.matches() ? new Entry(piece.part(0, onADay.end(1)), day(piece.part(onADay.start(2), onADay.end(2)))) : new Entry(piece, Optional.empty());
        }).toList();
    }

    private Section section(TypedBlock block) {
        int before = reader.findings().size();
        Fields fields = block.fields();
        reader.checkKeys(block.type(), fields);
        Front.RoomFields room = FrontReader.room(reader, pieces(fields, "room"));
        var day = DayValues.read(reader, pieces(fields, "on the day"));
        var groups = reader.whole(fields, "groups", 1, MOST_GROUPS);
        var size = reader.whole(fields, "group size", 1, MOST_GROUPS);
        Optional<String> date = date(fields);
        Optional<Copies> copies = copies(fields);
        var spare = reader.share(fields, "spare");
        var versions = versions(fields);
        return new Section(block, groups, size, date, room, day, entries(fields), copies, spare, versions, reader.findings().size() > before);
    }

    private OptionalInt versions(Fields fields) {
        return reader.whole(fields, "versions", 1, Setting.MOST_VERSIONS);
    }

    private static List<Piece> pieces(Fields fields, String key) {
        return fields.get(key).map(Fields.Field::pieces).orElse(List.of());
    }

    private Stream<At<String>> document(Piece piece) {
        String word = piece.text().toLowerCase(Locale.ROOT);
        if (DOCUMENTS.contains(word)) {
            return Stream.of(new At<>(word, piece.span()));
        }
        reader.note(new DeclareFinding.UnknownWord("documents", piece.text(), tarewright.text.Spelling.near(word, DOCUMENTS), DOCUMENTS, piece.span()));
        return Stream.empty();
    }

    private Optional<Copies> copies(Fields fields) {
        List<String> words = Stream.of(Copies.values()).map(Copies::words).toList();
        return reader.oneOf(fields, "copies", words).map(w -> Copies.values()[words.indexOf(w)]);
    }

    /** A day of the calendar, ISO 8601. */
    private Optional<String> date(Fields fields) {
        return reader.piece(fields, "date").flatMap(p -> {
            if (!p.text().strip().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
                reader.note(new DeclareFinding.BadShape("date", p.text(), "2041-02-04", p.span()));
                return Optional.empty();
            }
            return day(p);
        });
    }

    private Optional<String> day(Piece piece) {
        try {
            return Optional.of(LocalDate.parse(piece.text().strip()).toString());
        } catch (DateTimeException e) {
            reader.note(new DeclareFinding.NoSuchDay(piece.text(), piece.span()));
            return Optional.empty();
        }
    }
}
