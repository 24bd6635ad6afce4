package io.github.tapwright.report.xhtml;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads SVG into a tree, without fetching anything from anywhere. */
public final class SvgReader {

    /** Far more than any drawing program nests; what comes after this walks the tree by recursion. */
    private static final String DEEPEST = "200";

    private static final String DEPTH_LIMIT = "http://www.oracle.com/xml/jaxp/properties/maxElementDepth";

    private SvgReader() {}

    /** The text is no XML a report can hold, or asks for a document type, which could fetch or multiply things. */
    public static final class NoSvgException extends Exception {

        private static final long serialVersionUID = 1L;

        NoSvgException(Exception cause) {
            super(String.valueOf(cause.getMessage()), cause);
        }
    }

    /**
     * Reads one SVG document.
     *
     * @param svg its text
     * @return its root
     * @throws NoSvgException if it is no XML, has a document type, nests too deep or has names no drawing needs
     */
    public static Element read(String svg) throws NoSvgException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setAttribute(DEPTH_LIMIT, DEEPEST);
            factory.setExpandEntityReferences(false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return element(builder.parse(new InputSource(new StringReader(svg))).getDocumentElement());
        } catch (SAXException | IOException | IllegalArgumentException e) {
            throw new NoSvgException(e);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the Java platform's XML reader has these features", e);
        }
    }

    private static Element element(org.w3c.dom.Element from) {
        Map<String, String> attributes = new LinkedHashMap<>();
        NamedNodeMap all = from.getAttributes();
        for (int i = 0; i < all.getLength(); i++) {
            Attr attribute = (Attr) all.item(i);
            attributes.put(attribute.getName(), attribute.getValue());
        }
        List<Node> children = new ArrayList<>();
        NodeList nodes = from.getChildNodes();
        for (int i = 0; i < nodes.getLength(); i++) {
            org.w3c.dom.Node node = nodes.item(i);
            if (node instanceof org.w3c.dom.Element child) {
                children.add(element(child));
            } else if (node instanceof org.w3c.dom.CharacterData text && !(node instanceof org.w3c.dom.Comment)) {
                children.add(new Text(text.getData()));
            }
        }
        return new Element(from.getTagName(), attributes, children);
    }
}
