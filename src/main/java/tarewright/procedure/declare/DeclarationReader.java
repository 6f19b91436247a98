package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.finding.Found;
import tarewright.procedure.declare.AnswerBlock.Sought;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.declare.Notes.SettledBlock;
import tarewright.procedure.declare.Notes.StepWord;
import tarewright.procedure.declare.Notes.TrialBlock;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.declare.ReadingBlock.Difference;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.SourceFile;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.QuantityText;
import tarewright.setting.DayValue;
import tarewright.tables.ReferenceTables;

/** Reads a procedure's typed blocks into declarations. Never throws on what an author wrote. */
public final class DeclarationReader {
    private static final Pattern DIFFERENCE = Pattern.compile("(.+?)\\s+[-−–]\\s+(.+)");

    private final FieldReader reader;
    private final SourceFile source;
    private final List<TypedBlock> blocks;

    private DeclarationReader(SourceFile source, String name, List<DayValue> onTheDay, ReferenceTables tables) {
        this.source = source;
        this.reader = new FieldReader(tables);
        this.blocks = DayValues.in(source.blocks(), name, onTheDay, reader);
    }

    /** The declarations of a file, and what is wrong with single blocks. */
    public static Found<Procedure> read(SourceFile source, ReferenceTables tables) {
        return read(source, "", List.of(), tables);
    }

    /** The same with values as they are on the day in the place of those typed; one that no block has is a finding at its own place. @param name of the procedure */
    public static Found<Procedure> read(SourceFile source, String name, List<DayValue> onTheDay, ReferenceTables tables) {
        DeclarationReader all = new DeclarationReader(source, name, onTheDay, tables);
        Procedure procedure = all.procedure();
        return new Found<>(procedure, all.reader.findings());
    }

    /** A room as it is typed on the command line or in a section, with the findings at its places. */
    public static Found<Front.RoomFields> room(List<Piece> pieces, ReferenceTables tables) {
        FieldReader reader = new FieldReader(tables);
        Front.RoomFields room = FrontReader.room(reader, pieces);
        return new Found<>(room, reader.findings());
    }

    /** Values on the day as they are typed on the command line or in a section, with the findings at its places. */
    public static Found<List<DayValue>> onTheDay(List<Piece> pieces, ReferenceTables tables) {
        FieldReader reader = new FieldReader(tables);
        List<DayValue> values = DayValues.read(reader, pieces);
        return new Found<>(values, reader.findings());
    }

    /** Whether the procedure has the block that a value on the day is of. */
    public static boolean has(SourceFile source, String name, DayValue value) {
        return DayValues.meets(value, name, source.blocks());
    }

    /** Whether it is the strength or the purity of something of the procedure: what was made or bought as typed, and found to be otherwise. */
    public static boolean found(SourceFile source, String name, DayValue value) {
        return DayValues.found(value, name, source.blocks());
    }

    private Procedure procedure() {
        Front front = FrontReader.read(reader, source.front(), source.frontSpan());
        QuantityReader quantities = new QuantityReader(reader);
        ReactionReader reactions = new ReactionReader(reader);
        List<ReactionBlock> reactionBlocks = of("reaction").stream().map(reactions::read).toList();
        List<QuantityBlock> quantityBlocks = Portions.followed(blocks.stream()
                .filter(b -> List.of("solid", "liquid", "solution", "gas").contains(b.type())).map(quantities::read)
                .flatMap(q -> new DealReader(reader).members(q).stream()).toList());
        List<ApparatusItem> apparatus = ApparatusReader.read(reader, of("apparatus"));
        of("section").forEach(b -> reader.note(new DeclareFinding.NotYet("section", b.typeSpan())));
        return new Procedure(source, front, reactionBlocks, quantityBlocks, of("value").stream().map(this::value).toList(),
                of("reading").stream().map(this::reading).toList(), apparatus, of("caution").stream().map(this::caution).toList(),
                of("answer").stream().map(this::answer).toList(), of("waste").stream().map(this::waste).toList(),
                of("trial").stream().map(this::trial).toList(), of("settled").stream().map(this::settled).toList(),
                new StockReader(reader).all(source),
                of("graph").stream().map(new GraphReader(reader)::read).toList());
    }

    private List<TypedBlock> of(String type) {
        return blocks.stream().filter(b -> b.type().equals(type)).toList();
    }

    private Fields checked(TypedBlock block) {
        reader.checkKeys(block.type(), block.fields());
        return block.fields();
    }

    private void missing(TypedBlock block, String key, String example) {
        if (!block.fields().has(key)) {
            reader.note(new DeclareFinding.FieldMissing(block.type(), key, example, block.typeSpan()));
        }
    }

    private ValueBlock value(TypedBlock block) {
        Fields fields = checked(block);
        List<At<Expression>> versions = new VersionsReader(reader).of(fields);
        if (!fields.has("versions")) {
            missing(block, "is", "is: 24.0 L/mol");
        }
        return new ValueBlock(block, versions.stream().findFirst().or(() -> reader.expression(fields, "is")), versions, reader.unit(fields, "unit"), reader.precision(fields, "shown to"));
    }

    private ReadingBlock reading(TypedBlock block) {
        Fields fields = checked(block);
        Optional<Difference> difference = reader.piece(fields, "by difference").flatMap(p -> {
            Matcher matcher = DIFFERENCE.matcher(p.text().strip());
            if (!matcher.matches()) {
                reader.note(new DeclareFinding.BadShape("by difference", p.text(), "full - empty", p.span()));
                return Optional.empty();
            }
            Piece whole = p.trimmed();
            Piece first = whole.part(matcher.start(1), matcher.end(1));
            Piece second = whole.part(matcher.start(2), matcher.end(2));
            return Optional.of(new Difference(new At<>(first.text(), first.span()), new At<>(second.text(), second.span())));
        });
        return new ReadingBlock(block, reader.name(fields, "of"), reader.unit(fields, "unit"), reader.name(fields, "read with"),
                reader.whole(fields, "times", 1, 20).orElse(1), concordant(fields), difference, reader.expression(fields, "expect"));
    }

    private Optional<At<tarewright.quantity.Typed>> concordant(Fields fields) {
        return reader.piece(fields, "concordant within").flatMap(reader::quantity);
    }

    private CautionBlock caution(TypedBlock block) {
        Fields fields = checked(block);
        List<String> words = List.of(StepWord.values()).stream().map(StepWord::word).toList();
        missing(block, "hazard", "hazard: the acid burns skin and eyes");
        missing(block, "avoid", "avoid: wear goggles");
        Optional<String> severity = reader.oneOf(fields, "severity", words);
        missing(block, "severity", "severity: caution");
        return new CautionBlock(block, StepWord.valueOf(severity.orElse("warning").toUpperCase(Locale.ROOT)),
                reader.words(fields, "hazard").orElse(""), reader.words(fields, "consequence").orElse(""), reader.words(fields, "avoid").orElse(""));
    }

    private AnswerBlock answer(TypedBlock block) {
        Fields fields = checked(block);
        return new AnswerBlock(block, sought(block, fields), reader.whole(fields, "marks", 0, 100), reader.whole(fields, "lines", 0, 40),
                reader.unit(fields, "unit"), reader.precision(fields, "shown to"), within(fields),
                fields.get("reject").map(Fields.Field::pieces).orElse(List.of()).stream().map(Piece::text).toList());
    }

    private Optional<At<tarewright.quantity.Typed>> within(Fields fields) {
        return reader.piece(fields, "within").flatMap(reader::quantity);
    }

    private Sought sought(TypedBlock block, Fields fields) {
        List<Fields.Field> given = List.of("value", "words", "choice").stream().flatMap(k -> fields.get(k).stream()).toList();
        if (given.isEmpty()) {
            reader.note(new DeclareFinding.WordingMissing(block.typeSpan()));
            return new AnswerBlock.Missing();
        }
        if (given.size() > 1) {
            reader.note(new DeclareFinding.AmountFixedTwice(given.get(0).key(), given.get(1).key(), given.get(1).keySpan(),
                    List.of(given.get(0).keySpan())));
        }
        switch (given.get(0).key()) {
            case "value":
                Optional<At<Expression>> formula = reader.expression(fields, "value");
                return formula.<Sought>map(AnswerBlock.Worked::new).orElse(new AnswerBlock.Missing());
            case "words":
                return reader.piece(fields, "words").<Sought>map(p -> new AnswerBlock.InWords(new At<>(p.text(), p.span())))
                        .orElse(new AnswerBlock.Missing());
            default:
                List<Piece> options = given.get(0).pieces();
                if (options.size() < 2) {
                    reader.note(new DeclareFinding.BadShape("choice", given.get(0).value(), "the right one; a wrong one; another",
                            given.get(0).valueSpan()));
                    return new AnswerBlock.Missing();
                }
                return new AnswerBlock.Choice(options.stream().map(Piece::text).toList());
        }
    }

    private WasteBlock waste(TypedBlock block) {
        Fields fields = checked(block);
        missing(block, "into", "into: dilute acid waste");
        return new WasteBlock(block, reader.name(fields, "of"), reader.words(fields, "into").orElse(""), reader.matter(fields, "neutralise with"));
    }

    private TrialBlock trial(TypedBlock block) {
        Fields fields = checked(block);
        missing(block, "gave", "gave: 78 mL");
        return new TrialBlock(block, reader.name(fields, "of"), reader.expression(fields, "gave"), reader.name(fields, "on"));
    }

    private SettledBlock settled(TypedBlock block) {
        Fields fields = checked(block);
        missing(block, "finding", "finding: long-page");
        missing(block, "because", "because: the class has done this before");
        return new SettledBlock(block, reader.name(fields, "finding"), reader.name(fields, "because"));
    }
}
