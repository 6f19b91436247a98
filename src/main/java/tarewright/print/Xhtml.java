package tarewright.print;

import tarewright.document.Sheet;

/** Sheets as XHTML, by the template of their kind. For use by one thread at a time. */
public final class Xhtml {
    private final Templates templates;
    private final Pictures pictures = new Pictures(Medium.PAPER);
    private final SheetFacts facts = new SheetFacts(pictures);

    public Xhtml(Templates templates) {
        this.templates = templates;
    }

    /**
     * A whole page of XHTML with its style sheet inside. Every text of the sheet stands in it as text, whatever it holds.
     *
     * @throws BrokenTemplate if a template in the person's own folder cannot be used
     */
    public String render(Sheet sheet) {
        pictures.photographs().clear();
        return templates.fill(template(sheet), java.util.Map.of("sheet", facts.of(sheet)));
    }

    /** What the page that was last rendered names as its photographs. */
    Photographs photographs() {
        return pictures.photographs();
    }

    static String template(Sheet sheet) {
        return sheet.kind().word() + ".ftlx";
    }
}
