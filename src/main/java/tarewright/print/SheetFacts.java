package tarewright.print;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;
import tarewright.wording.TableWords;

/**
 * A sheet as a template sees it: maps, lists, text and truth values, never a number.
 *
 * <p>Each record becomes a map with the names of its components, and {@code kind}, the record's own name with a small first
 * letter. The few places where a template needs more than that (whether a formula may break, how wide a field is, the drawing
 * that belongs to a code) are added here.
 */
final class SheetFacts {
    private static final int LONGEST_RUN = 20;
    private static final int WIDEST_LEFT = 34;
    private static final int WIDEST_BLANK = 60;
    private static final char MAY_BREAK = '\u200B';

    private final Pictures pictures;
    private final Map<Class<?>, RecordComponent[]> components = new HashMap<>();
    private final List<Object> bookmarks = new ArrayList<>();
    private int deepestHeading = 1;
    private Sheet.Paper paper = Sheet.Paper.A4;
    private TableWords words = TableWords.in("en");

    SheetFacts(Pictures pictures) {
        this.pictures = pictures;
    }

    Map<String, Object> of(Sheet sheet) {
        bookmarks.clear();
        deepestHeading = 1;
        paper = sheet.paper();
        words = TableWords.in(sheet.language());
        Map<String, Object> facts = fields(sheet);
        facts.put("kind", sheet.kind().word());
        facts.put("bookmarks", List.copyOf(bookmarks));
        return facts;
    }

    private Map<String, Object> fields(Record record) {
        Map<String, Object> fields = new LinkedHashMap<>();
        String name = record.getClass().getSimpleName();
        fields.put("kind", name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1));
        own(record, fields);
        for (RecordComponent component : components.computeIfAbsent(record.getClass(), Class::getRecordComponents)) {
            if (!fields.containsKey(component.getName())) {
                fields.put(component.getName(), value(read(component, record)));
            }
        }
        return fields;
    }

    private static Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a record of document that cannot be read: " + record.getClass(), e);
        }
    }

    private Object value(Object value) {
        if (value instanceof Record record) {
            return fields(record instanceof Piece.Question question ? clung(question) : record);
        }
        if (value instanceof List<?> list) {
            return values(list);
        }
        if (value instanceof Optional<?> perhaps) {
            return perhaps.map(this::value).map(v -> (Object) List.of(v)).orElse(List.of());
        }
        if (value instanceof Enum<?> choice) {
            return choice.name().toLowerCase(Locale.ROOT);
        }
        if (value instanceof Boolean truth) {
            return truth;
        }
        return words(String.valueOf(value));
    }

    private List<Object> values(List<?> list) {
        boolean line = !list.isEmpty() && list.stream().allMatch(Text.class::isInstance);
        List<?> parts = line ? Glue.of(list.stream().map(Text.class::cast).toList()) : list;
        List<Object> values = new ArrayList<>(parts.size());
        for (int at = 0; at < parts.size(); at++) {
            Object part = parts.get(at);
            if (part instanceof Piece.Heading heading) {
                Optional<?> next = at + 1 < parts.size() ? Optional.of(parts.get(at + 1)) : Optional.empty();
                values.add(heading(heading, next));
            } else {
                values.add(part instanceof Glue.Whole whole ? whole(whole) : value(part));
            }
        }
        return values;
    }

    private Map<String, Object> heading(Piece.Heading heading, Optional<?> next) {
        Map<String, Object> fields = fields(heading);
        fields.put("long", !Aside.fits(heading, next));
        return fields;
    }

    private Map<String, Object> whole(Glue.Whole whole) {
        return Map.of("kind", "whole", "inside", whole.inside().stream().map(this::value).toList());
    }

    /** A run of more letters than a narrow column holds gets places where it may be broken, so that nothing runs off the page. */
    private static String words(String text) {
        String clean = SafeXml.clean(text);
        StringBuilder out = new StringBuilder(clean.length());
        int run = 0;
        for (int at = 0; at < clean.length(); at += Character.charCount(clean.codePointAt(at))) {
            int letter = clean.codePointAt(at);
            run = Character.isWhitespace(letter) ? 0 : run + 1;
            if (run > LONGEST_RUN) {
                out.append(MAY_BREAK);
                run = 1;
            }
            out.appendCodePoint(letter);
        }
        return out.toString();
    }

    /** The marks cling to the last words of what is asked, so that they never stand alone on a line. */
    private static Piece.Question clung(Piece.Question question) {
        List<Piece> asked = new ArrayList<>(question.asked());
        if (question.marks().isEmpty() || asked.isEmpty() || !(asked.get(asked.size() - 1) instanceof Piece.Paragraph last)) {
            return question;
        }
        List<Text> text = new ArrayList<>(last.text());
        text.add(new Text.Words("\u00A0[" + question.marks().replace(' ', '\u00A0') + "]"));
        asked.set(asked.size() - 1, new Piece.Paragraph(text));
        return new Piece.Question(question.number(), "", asked, question.space(), question.parts());
    }

    /**
     * What a template needs beyond the components, or in place of one. Each piece is converted once: its headings are numbered
     * by it.
     */
    private void own(Record record, Map<String, Object> fields) {
        if (record instanceof Piece.Heading heading) {
            heading(heading, fields);
        } else if (record instanceof Piece.RuledLines ruled) {
            fields.put("lines", java.util.Collections.nCopies(Math.max(0, ruled.lines()), ""));
        } else if (record instanceof Piece.Written written) {
            fields.put("lines", java.util.Collections.nCopies(Math.max(1, written.lines()), ""));
        } else if (record instanceof Piece.Leaf) {
            fields.put("paper", paper.name().toLowerCase(Locale.ROOT));
        } else if (record instanceof Piece.Choices choices) {
            fields.put("options", options(choices));
            fields.put("length", Aside.isShort(choices) ? "short" : "long");
        } else if (record instanceof Piece.Table table) {
            fields.putAll(new TableFacts(table, this::value).facts());
        } else if (record instanceof Piece.Steps steps) {
            fields.put("steps", steps(steps));
        } else if (record instanceof Piece.Working working) {
            fields.put("leftWidth", leftWidth(working));
        } else if (record instanceof Piece.WorkedLine line) {
            fields.put("relations", Relations.of(line.right()).stream().map(this::value).toList());
        } else if (record instanceof Piece.Hazard hazard) {
            fields.put("pictograms", pictograms(hazard.pictograms(), hazard.known()));
        } else if (record instanceof Piece.Labels labels) {
            fields.putAll(LabelPage.facts(labels, paper));
            fields.put("rows", LabelPage.rows(labels).stream().map(this::values).toList());
        } else if (record instanceof Piece.Label label) {
            fields.put("pictograms", pictograms(label.pictograms(), label.known()));
        } else if (record instanceof Piece.Caution caution) {
            fields.put("joint", PlainText.bare(caution.hazard()).matches("(?s).*[.!?]\\s*") ? " " : " – ");
            fields.put("triangle", pictures.alert(SafeXml.clean(caution.word())));
        } else if (record instanceof Piece.Sign sign) {
            fields.put("picture", pictures.sign(sign.code(), SafeXml.clean(sign.words())));
        } else if (record instanceof Piece.Signs signs) {
            fields.put("columns", Aside.columns(signs).stream().map(this::values).toList());
        } else if (record instanceof Piece.WallMark mark) {
            fields.put("picture", pictures.pictogram(mark.code(), words).get("picture"));
        } else if (record instanceof Piece.Graph graph) {
            fields.putAll(new GraphDrawing(graph).facts(pictures));
        } else if (record instanceof Piece.Drawing drawing) {
            fields.put("picture", pictures.drawing(drawing));
            fields.put("svg", "");
        } else if (record instanceof Piece.Photograph photograph) {
            fields.put("picture", pictures.photograph(photograph));
            fields.put("png", "");
        } else if (record instanceof Piece.FormLine form) {
            fields.put("fields", formFields(form));
        } else if (record instanceof Text.Blank blank) {
            fields.put("width", Integer.toString(Math.max(2, Math.min(blank.width(), WIDEST_BLANK))));
        } else if (record instanceof Text.Fraction fraction) {
            fields.put("spoken", SafeXml.clean(PlainText.bare(List.of(fraction))));
        }
    }

    /**
     * A level is never skipped in the tags, whatever the sheet does: a reader who moves by headings would look for the missing
     * one.
     */
    private void heading(Piece.Heading heading, Map<String, Object> fields) {
        int tag = Math.max(2, Math.min(heading.level(), deepestHeading + 1));
        deepestHeading = tag;
        String id = "h-" + (bookmarks.size() + 1);
        fields.put("tag", "h" + tag);
        fields.put("id", id);
        bookmarks.add(Map.of("id", id, "name", SafeXml.clean(PlainText.bare(heading.text()))));
    }

    /** Where nothing is known, the general warning sign: an unknown substance never looks like a harmless one. */
    private List<Map<String, Object>> pictograms(List<String> codes, boolean known) {
        return (known || !codes.isEmpty() ? codes : List.of("W001")).stream().map(code -> pictures.pictogram(code, words)).toList();
    }

    private List<Object> steps(Piece.Steps steps) {
        List<Object> numbered = new ArrayList<>();
        for (int i = 0; i < steps.steps().size(); i++) {
            numbered.add(Map.of("number", Integer.toString(steps.first() + i), "pieces", value(steps.steps().get(i))));
        }
        return numbered;
    }

    /**
     * The width of the left sides, in widths of a figure: the layout engine takes text with formulas in it for narrower than it
     * is.
     */
    private static String leftWidth(Piece.Working working) {
        int longest = working.lines().stream().map(line -> PlainText.bare(line.left())).mapToInt(String::length).max().orElse(0);
        return Integer.toString(Math.min(longest + 1, WIDEST_LEFT));
    }

    private List<Object> options(Piece.Choices choices) {
        List<Object> options = new ArrayList<>();
        for (int i = 0; i < choices.options().size(); i++) {
            boolean right = choices.right().isPresent() && choices.right().get() == i;
            options.add(Map.of("text", value(choices.options().get(i)), "right", right));
        }
        return options;
    }

    private List<Object> formFields(Piece.FormLine form) {
        double parts = form.fields().stream().mapToInt(f -> Math.max(1, f.share())).sum();
        List<Object> fields = new ArrayList<>();
        for (Piece.FormField field : form.fields()) {
            String percent = String.format(Locale.ROOT, "%.2f", 100 * Math.max(1, field.share()) / parts);
            fields.add(Map.of("label", words(field.label()), "percent", percent));
        }
        return fields;
    }
}
