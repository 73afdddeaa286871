package org.snugsheet.office.packaging;

import java.io.StringWriter;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A small XML document that is built from the top down. */
final class XmlText {

    private final Document document;
    private final Element root;

    XmlText(String name, Map<String, String> attributes) {
        try {
            document = DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
        document.setXmlStandalone(true);
        root = document.createElement(name);
        attributes.forEach(root::setAttribute);
        document.appendChild(root);
    }

    Element root() {
        return root;
    }

    Element child(Element parent, String name, Map<String, String> attributes) {
        Element child = document.createElement(name);
        attributes.forEach(child::setAttribute);
        parent.appendChild(child);
        return child;
    }

    String text() {
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.INDENT, "yes");
            transformer.setOutputProperty("{http://xml.apache.org/xslt}indent-amount", "2");
            StringWriter writer = new StringWriter();
            transformer.transform(new DOMSource(document), new StreamResult(writer));
            return writer.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException(e);
        }
    }
}
