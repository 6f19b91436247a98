package tarewright.document;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tarewright.finding.Finding;
import tarewright.procedure.declare.LabelPaper;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.bench.WorstHand;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.resolve.Missed;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Version;
import tarewright.setting.Paper;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;
import tarewright.wording.DocumentWords;

/** Makes the documents of a resolved procedure. */
public final class Documents {
    private final CountryRules country;
    private final List<StockBlock> shelf;

    /** @param country the hazard tables for the procedure's country; reading them takes a while, so they are read once */
    public Documents(CountryRules country) {
        this(country, List.of());
    }

    /** @param shelf the bottles of a term; the procedure's own are known */
    public Documents(CountryRules country, List<StockBlock> shelf) {
        this.country = country;
        this.shelf = List.copyOf(shelf);
    }

    /**
     * The sheets asked for, in the order handout, key, safety, prep, labels, missed, missed-key; of what a student gets, one for each version of the questions' numbers. Labels are left out where nothing needs one, and what is for a
     * student who missed the class where nothing is read, see {@link Missed}. Supplied readings follow from the version code.
     *
     * @param warnings what the key tells the teacher at its end
     * @param version the code in every footer, see {@link VersionCode}
     * @param footer words for the footer, such as the school's name; may be empty
     */
    public List<Sheet> sheets(Resolved procedure, Set<Sheet.Kind> kinds, List<Finding> warnings, String version, String footer) {
        return new Documents(HazardTables.in(country, procedure.setting().language()), shelf).spoken(procedure, kinds, warnings, version, footer);
    }

    private List<Sheet> spoken(Resolved procedure, Set<Sheet.Kind> kinds, List<Finding> warnings, String version, String footer) {
        List<Sheet> sheets = new ArrayList<>();
        Disposal disposal = Disposal.of(Draft.of(procedure, true), procedure, country.rules());
        if (kinds.contains(Sheet.Kind.HANDOUT)) {
            for (Version each : procedure.eachVersion()) {
                sheets.add(lettered(each, sheet(Sheet.Kind.HANDOUT, each.resolved(), new Hands(each.resolved(), false)
                        .each(d -> new Handout(d, country.rules(), disposal).pieces()), version, footer)));
            }
        }
        if (kinds.contains(Sheet.Kind.KEY)) {
            List<Piece> key = new Hands(procedure, true).key(open -> new Key(open, Lettered.of(procedure, open), its -> leaf(its, disposal), warnings, country.rules()));
            sheets.add(sheet(Sheet.Kind.KEY, procedure, key, version, footer));
        }
        if (kinds.contains(Sheet.Kind.SAFETY)) {
            sheets.add(sheet(Sheet.Kind.SAFETY, procedure, new SafetySheet(Draft.of(WorstHand.of(procedure, country.rules()), false), procedure, country).pieces(), version,
                    footer));
        }
        if (kinds.contains(Sheet.Kind.PREP)) {
            sheets.add(sheet(Sheet.Kind.PREP, procedure, new PrepSheet(Draft.of(procedure, true), shelf, country.rules()).pieces(), version, footer));
        }
        if (kinds.contains(Sheet.Kind.LABELS)) {
            LabelPaper paper = procedure.procedure().front().labels().orElse(LabelPaper.USUAL);
            List<Piece> labels = new BottleLabels(Draft.of(WorstHand.of(procedure, country.rules()), false), procedure, country.rules(), version).pieces(paper);
            if (!labels.isEmpty()) {
                sheets.add(sheet(Sheet.Kind.LABELS, procedure, labels, version, footer));
            }
        }
        if (kinds.contains(Sheet.Kind.MISSED) || kinds.contains(Sheet.Kind.MISSED_KEY)) {
            for (Version each : procedure.eachVersion()) {
                Missed.of(each.resolved(), VersionCode.seed(version)).ifPresent(missed -> missed(each, missed, disposal, kinds, version, footer, sheets));
            }
        }
        return sheets;
    }

    /** For a student who missed the class, and for whoever marks that. */
    private void missed(Version each, Resolved missed, Disposal disposal, Set<Sheet.Kind> kinds, String version, String footer, List<Sheet> into) {
        Resolved procedure = each.resolved();
        if (kinds.contains(Sheet.Kind.MISSED)) {
            into.add(lettered(each, sheet(Sheet.Kind.MISSED, procedure, new Hands(missed, false).each(d -> {
                List<Piece> pieces = new ArrayList<>(List.of(new Piece.Paragraph(List.of(new Text.Strong(Text.words(d.say("missed.said")))))));
                pieces.addAll(Handout.filledIn(d, country.rules(), disposal, new SuppliedReadings(d, new Handout(d, country.rules(), disposal))).pieces());
                return pieces;
            }), version, footer)));
        }
        if (kinds.contains(Sheet.Kind.MISSED_KEY)) {
            Map<Resolved, Resolved> usual = new IdentityHashMap<>();
            for (int i = 0; i < procedure.hands().size(); i++) {
                usual.put(missed.hands().get(i).resolved(), procedure.hands().get(i).resolved());
            }
            into.add(lettered(each, sheet(Sheet.Kind.MISSED_KEY, procedure, new Hands(missed, true).each(d ->
                    new MissedKey(Draft.of(usual.get(d.procedure()), true), d).pieces()), version, footer)));
        }
    }

    /** A sheet that is one of several versions says which in its title, and so at the foot of each page. */
    private static Sheet lettered(Version version, Sheet sheet) {
        return version.letter().isEmpty() ? sheet : sheet.lettered(version.letter(), titled(sheet.title(), version.letter(), sheet.language()));
    }

    static String titled(String title, String letter, String language) {
        return letter.isEmpty() ? title : DocumentWords.in(language).say("version.title", "title", title, "letter", letter);
    }

    /** The handout of the same hand with its blanks filled. */
    private List<Piece> leaf(Draft open, Disposal disposal) {
        return Handout.filledIn(Draft.of(open.procedure(), false), country.rules(), disposal, new FilledIn(open)).pieces();
    }

    /** These sheets, and after each that is read at the bench the same in large print. */
    public static List<Sheet> withLarge(List<Sheet> sheets) {
        List<Sheet> all = new ArrayList<>();
        for (Sheet sheet : sheets) {
            all.add(sheet);
            if (sheet.kind() == Sheet.Kind.HANDOUT || sheet.kind() == Sheet.Kind.SAFETY || sheet.kind() == Sheet.Kind.MISSED) {
                all.add(sheet.large(DocumentWords.in(sheet.language()).say("kind.large", "kind", sheet.kindName())));
            }
        }
        return all;
    }

    /** The order list of a term, in the language and on the paper of the first. @param needs at least one */
    public static Sheet order(String term, List<Need> needs, String version, String footer) {
        OrderSheet order = new OrderSheet(needs);
        return sheet(Sheet.Kind.ORDER, order.draft().procedure(), order.pieces(), version, footer).headed(term);
    }

    /** The prep sheet of a whole term, in the language and on the paper of the first. @param title the term's name @param needs at least one */
    public static Sheet termPrep(String title, List<Need> needs, String version, String footer) {
        TermPrepSheet prep = new TermPrepSheet(needs);
        return sheet(Sheet.Kind.PREP, prep.draft().procedure(), prep.pieces(), version, footer).headed(title);
    }

    private static Sheet sheet(Sheet.Kind kind, Resolved procedure, List<Piece> pieces, String version, String footer) {
        String language = procedure.setting().language();
        DocumentWords words = DocumentWords.in(language);
        String title = procedure.procedure().front().title().map(t -> t.value()).orElse(procedure.name());
        boolean students = kind == Sheet.Kind.HANDOUT || kind == Sheet.Kind.SAFETY || kind == Sheet.Kind.MISSED;
        String shown = students ? Draft.of(procedure, false).prose().veiled(title) : title;
        Sheet.Paper paper = procedure.setting().paper() == Paper.LETTER ? Sheet.Paper.LETTER : Sheet.Paper.A4;
        return new Sheet(kind, shown, words.say("kind." + kind.word()), procedure.procedure().front().code(), version, language,
                paper, footer, new Sheet.PageWords(words.say("page"), words.say("page.of")), pieces);
    }
}
