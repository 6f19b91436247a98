package tarewright.print;

import java.io.ByteArrayInputStream;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Reads XML that must stand on its own: no document type, hence no entities, and nothing outside the text itself. */
final class SafeXml {
    private final DocumentBuilder builder;

    SafeXml() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Silent());
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    Document read(String text) throws SAXException {
        return read(new InputSource(new StringReader(text)));
    }

    /** In the encoding that it says it has. */
    Document read(byte[] bytes) throws SAXException {
        return read(new InputSource(new ByteArrayInputStream(bytes)));
    }

    private Document read(InputSource source) throws SAXException {
        try {
            return builder.parse(source);
        } catch (CharConversionException e) {
            throw new SAXException(e);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * XML 1.0 has no place for most control characters and for halves of a surrogate pair: the replacement character stands in.
     */
    static String clean(String text) {
        if (text.codePoints().allMatch(SafeXml::allowed)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(c -> clean.appendCodePoint(allowed(c) ? c : 0xFFFD));
        return clean.toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c == '\r' || (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }

    /** The parser's own handler prints to the console. */
    private static final class Silent implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) {
            // A warning of the parser never concerns text without a document type.
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
