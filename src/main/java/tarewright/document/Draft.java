package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.ShownFormula;
import tarewright.derivation.Figure;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.wording.DocumentWords;
import tarewright.wording.Numbers;
import tarewright.wording.Quantities;
import tarewright.wording.Spoken;
import tarewright.wording.TableWords;

/**
 * What all parts of one document share: the procedure, the words, and what its reader may see.
 *
 * @param open whether everything may be seen; if not, secrets are kept
 */
record Draft(Resolved procedure, DocumentWords words, TableWords tables, Numbers numbers, Typeset typeset, Prose prose, Secrets secrets,
        boolean open) {
    private static final String RECALLED = " (memory)";

    /** @param open whether its reader may see everything */
    static Draft of(Resolved procedure, boolean open) {
        String language = procedure.setting().language();
        DocumentWords words = DocumentWords.in(language);
        TableWords tables = TableWords.in(language);
        Quantities quantities = Quantities.in(language);
        Typeset typeset = new Typeset(new Spoken(procedure.tables().substances(), procedure.tables().elements(), words, tables),
                symbol -> quantities.said(named(procedure, tables, symbol)));
        Secrets secrets = Secrets.of(procedure);
        return new Draft(procedure, words, tables, Numbers.in(language), typeset,
                new Prose(formulas(procedure), secrets.shownFormulas(), f -> open ? Optional.empty() : secrets.shownAs(f), typeset), secrets, open);
    }

    /** A symbol that belongs to what the program took from a table, under its name in the document's language. */
    private static Symbol named(Resolved procedure, TableWords tables, Symbol symbol) {
        boolean authors = procedure.procedure().quantity(symbol.of()).isPresent() || procedure.procedure().stock(symbol.of()).isPresent();
        return symbol.kind() != Symbol.Kind.NAME || authors ? symbol : Symbol.ofName(symbol.letter(), tables.name(symbol.of()));
    }

    /** What a substance is called here: the one place where a document asks for it. @param english its name in the tables */
    String called(String english) {
        return tables.name(english);
    }

    /** The same for what an author named: the table's name, else her own words. */
    String called(Matter matter) {
        return called(matter.name());
    }

    /** A source of the tables, part by part as semicolons divide it; titles of works stay as they are. */
    String source(String english) {
        boolean recalled = english.endsWith(RECALLED);
        String bare = recalled ? english.substring(0, english.length() - RECALLED.length()) : english;
        String source = Stream.of(bare.split("; ")).map(tables::phrase).collect(Collectors.joining("; "));
        return recalled ? say("source.recalled", "source", source) : source;
    }

    /** Every formula that the procedure uses. */
    private static Set<Formula> formulas(Resolved procedure) {
        Set<Formula> all = new LinkedHashSet<>();
        for (QuantityBlock block : procedure.procedure().quantities()) {
            block.matter().ifPresent(m -> all.add(m.value().formula()));
            block.actsAs().ifPresent(m -> all.add(m.value().formula()));
            block.also().forEach(a -> all.add(a.matter().formula()));
            block.strength().flatMap(s -> s.value().asFormula()).map(Formula::parse).ifPresent(r -> {
                if (r instanceof FormulaResult.Ok ok) {
                    all.add(ok.formula());
                }
            });
        }
        for (ReactionBlock reaction : procedure.procedure().reactions()) {
            reaction.equation().ifPresent(e -> e.terms().forEach(t -> all.add(t.species().formula())));
        }
        procedure.procedure().wastes().forEach(w -> w.neutraliseWith().map(At::value).map(Matter::formula).ifPresent(all::add));
        return all;
    }

    boolean keeps(Figure figure) {
        return !open && secrets.hides(figure);
    }

    Optional<ShownFormula> disguise(Formula formula) {
        return open ? Optional.empty() : secrets.shownAs(formula);
    }

    Text.Chemical formula(Formula formula) {
        return disguise(formula).map(typeset::shown).orElseGet(() -> typeset.formula(formula));
    }

    Text.Chemical equation(BalancedEquation equation, ReactionBlock reaction) {
        List<Formula> over = reaction.catalysts().stream().flatMap(c -> catalyst(c.value()).stream()).toList();
        return typeset.equation(equation, over, this::disguise);
    }

    /** A catalyst is named by its block, by its name or by its formula. */
    private Optional<Formula> catalyst(String name) {
        Optional<Formula> block = procedure.quantity(name).flatMap(q -> q.matter()).map(Matter::formula);
        return block.or(() -> procedure.tables().substances().named(name).flatMap(s -> s.formula()))
                .or(() -> Formula.parse(name) instanceof FormulaResult.Ok ok ? Optional.of(ok.formula()) : Optional.empty());
    }

    String say(String key, Object... named) {
        return words.say(key, named);
    }

    /** A sentence with set pieces in the place of its placeholders. */
    List<Text> compose(String key, Map<String, List<Text>> named) {
        List<Text> set = new ArrayList<>();
        Typeset.append(set, words.<Text>compose(key, Text.Words::new, name -> {
            if (!named.containsKey(name)) {
                throw new IllegalStateException("no value for {" + name + "} of " + key);
            }
            return named.get(name);
        }));
        return set;
    }

    /** A heading of a key's words. */
    Piece.Heading heading(int level, String key) {
        return new Piece.Heading(level, Text.words(say(key)));
    }

    Piece.Paragraph paragraph(String key, Object... named) {
        return new Piece.Paragraph(Text.words(say(key, named)));
    }
}
