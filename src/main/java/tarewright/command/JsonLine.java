package tarewright.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.POJONode;
import com.fasterxml.jackson.databind.node.ValueNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** A tree, or maps and lists, as one line of JSON: without the library's mapper for any class, which takes longer to set up than the line to write. */
final class JsonLine {
    private JsonLine() {
    }

    /** @param value trees, maps, lists, text, whole numbers and truth values, in one another */
    static String of(Object value) {
        StringWriter line = new StringWriter(8192);
        try (JsonGenerator to = new JsonFactory().createGenerator(line)) {
            write(value, to);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return line.toString();
    }

    private static void write(Object value, JsonGenerator to) throws IOException {
        if (value instanceof POJONode other) {
            write(other.getPojo(), to);
        } else if (value instanceof NullNode) {
            to.writeNull();
        } else if (value instanceof ValueNode leaf) {
            leaf.serialize(to, null);
        } else if (value instanceof JsonNode node && node.isArray()) {
            list(node, to);
        } else if (value instanceof JsonNode node) {
            to.writeStartObject();
            for (Map.Entry<String, JsonNode> each : node.properties()) {
                field(each, to);
            }
            to.writeEndObject();
        } else if (value instanceof Map<?, ?> map) {
            to.writeStartObject();
            for (Map.Entry<?, ?> each : map.entrySet()) {
                field(each, to);
            }
            to.writeEndObject();
        } else if (value instanceof List<?> many) {
            list(many, to);
        } else if (value instanceof Boolean truth) {
            to.writeBoolean(truth);
        } else if (value instanceof Integer whole) {
            to.writeNumber(whole);
        } else if (value instanceof String text) {
            to.writeString(text);
        } else {
            throw new IllegalArgumentException("no JSON for " + value.getClass());
        }
    }

    private static void field(Map.Entry<?, ?> field, JsonGenerator to) throws IOException {
        to.writeFieldName((String) field.getKey());
        write(field.getValue(), to);
    }

    private static void list(Iterable<?> many, JsonGenerator to) throws IOException {
        to.writeStartArray();
        for (Object each : many) {
            write(each, to);
        }
        to.writeEndArray();
    }
}
