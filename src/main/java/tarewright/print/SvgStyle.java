package tarewright.print;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.parser.property.Conversions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * What an element of an author's SVG file looks like, from its attributes and its {@code style}: properties by name, what is inherited included. What
 * cannot be printed in flat colours is told by its name.
 */
final class SvgStyle {
    /** As SVG 1.1 (W3C, 2011) gives them. */
    private static final Map<String, String> INITIAL = Map.of("fill", "#000000", "stroke", "none", "stroke-width", "1", "font-size", "16",
            "font-weight", "400", "font-style", "normal", "text-anchor", "start");
    /** A pattern is a few lengths; it is written again for every line. */
    private static final int LONGEST_DASHES = 500;
    private static final Set<String> INHERITED = Set.of("fill", "fill-rule", "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin", "stroke-dasharray",
            "stroke-dashoffset", "stroke-miterlimit", "font-size", "font-weight", "font-style", "text-anchor", "visibility", "fill-opacity", "stroke-opacity",
            "color", "baseline-shift", "dominant-baseline");
    /** What must be as it is by itself, for a printed page cannot show it otherwise. */
    private static final Map<String, Set<String>> ONLY = Map.ofEntries(Map.entry("filter", Set.of("none")), Map.entry("mask", Set.of("none")),
            Map.entry("clip-path", Set.of("none")), Map.entry("marker", Set.of("none")), Map.entry("marker-start", Set.of("none")),
            Map.entry("marker-mid", Set.of("none")), Map.entry("marker-end", Set.of("none")), Map.entry("mix-blend-mode", Set.of("normal")),
            Map.entry("transform", Set.of("none")), Map.entry("transform-origin", Set.of()), Map.entry("writing-mode", Set.of("lr", "lr-tb", "horizontal-tb")),
            Map.entry("animation", Set.of("none")), Map.entry("d", Set.of()), Map.entry("clip", Set.of("auto")));
    /** 254 of 255 is what drawing programs write for all. */
    private static final double OPAQUE = 0.99;
    private static final Set<String> OWN = Set.of("opacity", "display");
    private static final Map<String, Set<String>> WORDS = Map.of("fill-rule", Set.of("nonzero", "evenodd"), "stroke-linecap", Set.of("butt", "round", "square"),
            "stroke-linejoin", Set.of("miter", "round", "bevel"), "text-anchor", Set.of("start", "middle", "end"), "font-style", Set.of("normal", "italic", "oblique"));
    private static final Pattern RGB = Pattern.compile("rgb\\(\\s*([0-9.]{1,9}%?)[\\s,]+([0-9.]{1,9}%?)[\\s,]+([0-9.]{1,9}%?)\\s*\\)");

    private final Map<String, String> properties;
    private final Consumer<String> notPrinted;

    private SvgStyle(Map<String, String> properties, Consumer<String> notPrinted) {
        this.properties = properties;
        this.notPrinted = notPrinted;
    }

    /** @param notPrinted takes what cannot be printed, as it stands in the file */
    static SvgStyle initial(Consumer<String> notPrinted) {
        return new SvgStyle(new LinkedHashMap<>(INITIAL), notPrinted);
    }

    /** The style of a child. */
    SvgStyle of(Element element) {
        Map<String, String> all = new LinkedHashMap<>(properties);
        all.keySet().retainAll(INHERITED);
        SvgStyle child = new SvgStyle(all, notPrinted);
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            String name = element.getAttributes().item(i).getNodeName();
            if (INHERITED.contains(name) || OWN.contains(name) || ONLY.containsKey(name) && !name.equals("transform") && !name.equals("d")) {
                child.set(name, element.getAttributes().item(i).getNodeValue(), this);
            }
        }
        for (String declaration : element.getAttribute("style").split(";")) {
            int colon = declaration.indexOf(':');
            if (colon > 0) {
                child.set(declaration.substring(0, colon), declaration.substring(colon + 1), this);
            }
        }
        return child;
    }

    private void set(String key, String given, SvgStyle parent) {
        String name = key.strip().toLowerCase(Locale.ROOT);
        String value = given.replaceFirst("(?i)!\\s*important\\s*$", "").strip();
        if (ONLY.containsKey(name) && !ONLY.get(name).contains(value.toLowerCase(Locale.ROOT))) {
            notPrinted.accept(name);
        }
        if (!INHERITED.contains(name) && !OWN.contains(name) || value.equalsIgnoreCase("inherit")) {
            return;
        }
        Optional<String> read = switch (name) {
            case "fill", "stroke" -> colour(value);
            case "color" -> colour(value).or(() -> Optional.of("#000000"));
            case "opacity", "fill-opacity", "stroke-opacity" -> opacity(value);
            case "stroke-width", "stroke-dashoffset" -> SvgLengths.length(value, size(), 100).filter(v -> v >= 0 || name.equals("stroke-dashoffset")).map(SvgStyle::number);
            case "stroke-miterlimit" -> SvgLengths.length(value, 1, 1).filter(v -> v >= 1).map(SvgStyle::number);
            case "stroke-dasharray" -> dashes(value);
            case "font-size" -> SvgLengths.length(value, parent.size(), parent.size()).filter(v -> v > 0).map(SvgStyle::number);
            case "font-weight" -> Optional.of(value.matches("(?i)bold|bolder|[6-9][0-9][0-9]") ? "700" : "400");
            case "visibility", "display", "baseline-shift", "dominant-baseline" -> Optional.of(value.toLowerCase(Locale.ROOT));
            default -> Optional.of(value.toLowerCase(Locale.ROOT)).filter(WORDS.get(name)::contains);
        };
        read.ifPresentOrElse(r -> properties.put(name, r), () -> notPrinted.accept(name + ": " + value));
    }

    /** Flat and opaque; {@code transparent} is none. */
    private Optional<String> colour(String value) {
        String low = value.toLowerCase(Locale.ROOT);
        Matcher rgb = RGB.matcher(low);
        if (low.equals("none") || low.equals("transparent")) {
            return Optional.of("none");
        } else if (low.equals("currentcolor")) {
            return Optional.of(properties.getOrDefault("color", "#000000"));
        } else if (low.matches("#[0-9a-f]{6}")) {
            return Optional.of(low);
        } else if (low.matches("#[0-9a-f]{3}")) {
            return Optional.of(low.replaceAll("([0-9a-f])", "$1$1"));
        } else if (rgb.matches()) {
            StringBuilder hex = new StringBuilder("#");
            for (int i = 1; i <= 3; i++) {
                Optional<Double> part = SvgLengths.length(rgb.group(i), 1, 255);
                if (part.isEmpty()) {
                    return Optional.empty();
                }
                hex.append(String.format(Locale.ROOT, "%02x", (int) Math.round(Math.min(255, part.get()))));
            }
            return Optional.of(hex.toString());
        }
        return named(low);
    }

    private static Optional<String> named(String name) {
        return Optional.ofNullable(Conversions.getColor(name)).map(FSRGBColor.class::cast)
                .map(c -> String.format(Locale.ROOT, "#%02x%02x%02x", c.getRed(), c.getGreen(), c.getBlue()));
    }

    /** All or nothing: what shows through cannot be printed in flat colours. */
    private static Optional<String> opacity(String value) {
        return SvgLengths.length(value, 1, 1).filter(v -> v >= OPAQUE || v <= 1 - OPAQUE).map(v -> v > 0.5 ? "1" : "0");
    }

    private static Optional<String> dashes(String value) {
        if (value.equalsIgnoreCase("none")) {
            return Optional.of("none");
        }
        if (value.length() > LONGEST_DASHES) {
            return Optional.empty();
        }
        List<String> read = new ArrayList<>();
        double sum = 0;
        for (String each : value.strip().split("[\\s,]+")) {
            Optional<Double> length = SvgLengths.length(each, 1, 100).filter(v -> v >= 0);
            if (length.isEmpty()) {
                return Optional.empty();
            }
            sum += length.get();
            read.add(number(length.get()));
        }
        return Optional.of(sum > 0 ? String.join(" ", read) : "none");
    }

    /** Font size in user units. */
    double size() {
        return Double.parseDouble(properties.get("font-size"));
    }

    boolean bold() {
        return properties.get("font-weight").equals("700");
    }

    boolean italic() {
        return !properties.get("font-style").equals("normal");
    }

    String anchor() {
        return properties.get("text-anchor");
    }

    /** How far below its usual place the text stands, in user units: by the letters of a usual sans-serif face. */
    double lowered() {
        double middle = switch (properties.getOrDefault("dominant-baseline", "")) {
            case "middle" -> 0.25;
            case "central" -> 0.33;
            case "hanging", "text-before-edge" -> 0.7;
            default -> 0;
        };
        return size() * (middle + switch (properties.getOrDefault("baseline-shift", "")) {
            case "sub" -> 0.2;
            case "super" -> -0.35;
            default -> 0;
        });
    }

    boolean shown() {
        return !"none".equals(properties.get("display")) && !"0".equals(properties.get("opacity"));
    }

    boolean visible() {
        return !properties.getOrDefault("visibility", "visible").matches("hidden|collapse");
    }

    /** The least length that dashes repeat after, in user units; 0 for none. */
    double dash() {
        String dashes = properties.getOrDefault("stroke-dasharray", "none");
        return dashes.equals("none") ? 0 : SvgLengths.numbers(dashes).orElseThrow().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** The attributes of a shape, each written; letters have no stroke unless they are given one. */
    String attributes() {
        StringBuilder out = new StringBuilder();
        String fill = "0".equals(properties.get("fill-opacity")) ? "none" : properties.get("fill");
        boolean stroked = !"0".equals(properties.get("stroke-opacity")) && !properties.get("stroke").equals("none") && !properties.get("stroke-width").equals("0");
        attribute(out, "fill", fill);
        if (properties.containsKey("fill-rule")) {
            attribute(out, "fill-rule", properties.get("fill-rule"));
        }
        if (stroked) {
            for (String each : List.of("stroke", "stroke-width", "stroke-linecap", "stroke-linejoin", "stroke-dasharray", "stroke-dashoffset", "stroke-miterlimit")) {
                if (properties.containsKey(each)) {
                    attribute(out, each, properties.get(each));
                }
            }
        }
        return out.toString();
    }

    private static void attribute(StringBuilder out, String name, String value) {
        out.append(' ').append(name).append("=\"").append(value).append('"');
    }

    /** Seven digits, without an exponent. */
    static String number(double value) {
        java.math.BigDecimal rounded = new java.math.BigDecimal(value).round(new java.math.MathContext(7)).stripTrailingZeros();
        return rounded.scale() > 12 ? rounded.setScale(12, java.math.RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString() : rounded.toPlainString();
    }
}
