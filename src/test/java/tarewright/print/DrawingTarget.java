package tarewright.print;

import tarewright.fuzz.Held;

/** Any text as a drawing: refused in one way, or written anew as XML that is read again. */
public final class DrawingTarget {
    private DrawingTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Held.text(bytes);
        Held.soon(() -> {
            SafeSvg drawing;
            try {
                drawing = SafeSvg.of(text);
            } catch (IllegalArgumentException e) {
                return;
            }
            // What was taken must be taken again: it holds nothing but shapes.
            SafeSvg.of(drawing.markup("a", "", drawing.title(), "en", Medium.WEB));
        });
    }
}
