package tarewright.print;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.xml.sax.SAXException;
import tarewright.document.Sheet;

/**
 * Prints sheets as one HTML file each, for a browser and a screen reader: everything inside, no script, nothing fetched, the same bytes for the
 * same sheet. What it makes is well-formed XML as well. Use one for each thread.
 */
public final class WebPrinter {
    private static final String TEMPLATE = "web/sheet.ftlx";
    private static final String DOCTYPE = "<!DOCTYPE html>";

    private final Templates templates;
    private final SheetFacts facts = new SheetFacts(new Pictures(Medium.WEB));
    private final SafeXml xml = new SafeXml();

    public WebPrinter(Templates templates) {
        this.templates = templates;
    }

    /**
     * A whole page, in UTF-8.
     *
     * @throws BrokenTemplate if a template in the person's own folder cannot be used
     */
    public byte[] print(Sheet sheet) {
        String page = templates.fill(TEMPLATE, Map.of("sheet", facts.of(sheet))).strip();
        try {
            xml.read(page.startsWith(DOCTYPE) ? page.substring(DOCTYPE.length()) : page);
        } catch (SAXException e) {
            throw new BrokenTemplate(TEMPLATE, Optional.empty(), Optional.empty(), "what it makes is not well-formed XML: " + e.getMessage());
        }
        return (page + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
