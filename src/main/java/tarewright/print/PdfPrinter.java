package tarewright.print;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import tarewright.document.Sheet;

/**
 * Prints sheets as tagged PDF files: PDF/UA-1 and PDF/A-2a, every used typeface inside, the same bytes for the same sheet.
 * Typefaces and templates are read once for each printer; use one printer for each thread.
 */
public final class PdfPrinter {
    private static final String PRODUCER = "Tarewright";

    private final Xhtml xhtml;
    private final WebPrinter web;
    private final SafeXml xml = new SafeXml();
    private final Fonts fonts = new Fonts();
    private final ColourProfile colour = new ColourProfile();

    public PdfPrinter(Templates templates) {
        xhtml = new Xhtml(templates);
        web = new WebPrinter(templates);
        XRLog.setLoggerImpl(new NoConsole());
    }

    /** Prints for a browser by the same templates. */
    public WebPrinter web() {
        return web;
    }

    /**
     * Prints one sheet.
     *
     * @throws BrokenTemplate if a template in the person's own folder cannot be used
     */
    public Printed print(Sheet sheet) {
        String markup = xhtml.render(sheet);
        Photographs photographs = xhtml.photographs();
        Document page = read(markup, Xhtml.template(sheet));
        List<String> remarks = new ArrayList<>();
        try (PDDocument document = new PDDocument()) {
            boolean spilled = lay(page, photographs, document, remarks);
            TagTidy.tidy(document);
            colour.put(document);
            Stamp.of(sheet, PRODUCER, markup).put(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
            document.save(out, CompressParameters.DEFAULT_COMPRESSION);
            return new Printed(out.toByteArray(), document.getNumberOfPages(), fonts.missing(shown(page)), spilled,
                    remarks);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Lays out and paints. Meanwhile the thread looks for services in the Java runtime alone: the engine asks for an XML
     * library at each print, and another one on the class path would be searched for, at a fifth of the time, and change the
     * bytes.
     */
    private boolean lay(Document page, Photographs photographs, PDDocument document, List<String> remarks) throws IOException {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(ClassLoader.getPlatformClassLoader());
        try {
            return paint(page, photographs, document, remarks);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private boolean paint(Document page, Photographs photographs, PDDocument document, List<String> remarks) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.withW3cDocument(page, null);
        builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
        builder.usePdfUaAccessibility(true);
        builder.useColorProfile(colour.bytes());
        builder.withProducer(PRODUCER);
        builder.useCacheStore(CacheStore.PDF_FONT_METRICS, fonts.metrics());
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUnicodeLineBreaker(new LineBreaks());
        builder.withDiagnosticConsumer(d -> note(d, remarks));
        Nothing.fetched(builder, photographs);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            fonts.use(renderer.getFontResolver(), document);
            renderer.createPDFWithoutClosing();
            return LabelPage.spilled(renderer);
        }
    }

    private static void note(Diagnostic diagnostic, List<String> remarks) {
        if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
            remarks.add(diagnostic.getFormattedMessage());
        }
    }

    private Document read(String markup, String template) {
        try {
            return xml.read(markup);
        } catch (SAXParseException e) {
            throw new BrokenTemplate(template, Optional.empty(), Optional.empty(),
                    "what it makes is not well-formed XML, line " + e.getLineNumber() + ": " + e.getMessage());
        } catch (SAXException e) {
            throw new BrokenTemplate(template, Optional.empty(), Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    private static String shown(Document page) {
        return page.getElementsByTagName("body").item(0).getTextContent();
    }
}
