package org.snugsheet.sheets;

import com.sun.star.embed.ElementModes;
import com.sun.star.embed.XStorage;
import com.sun.star.embed.XTransactedObject;
import com.sun.star.io.XStream;
import com.sun.star.io.XTruncate;
import com.sun.star.lang.XSingleServiceFactory;
import com.sun.star.lib.uno.adapter.XInputStreamToInputStreamAdapter;
import com.sun.star.lib.uno.adapter.XOutputStreamToOutputStreamAdapter;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.XComponentContext;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Zoom;
import org.snugsheet.office.uno.Uno;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/**
 * What a reader sees on opening: which page, where the cursor is, and no grid lines but those of the styles.
 *
 * <p>The office keeps this in a file if it has a window on a screen, which an office of a build has not. So it is the one
 * thing that is added to the finished file, in the words of the office’s own view settings ({@link ViewSettings}).
 *
 * @param book the document
 */
record FirstView(Book book) {

    private static final String SETTINGS = "settings.xml";

    /** Adds it to an .ods file that nobody has open. */
    void addTo(Path ods, XComponentContext office) throws com.sun.star.uno.Exception {
        XSingleServiceFactory packages =
                Uno.as(XSingleServiceFactory.class, Uno.service(office, "com.sun.star.embed.StorageFactory"));
        Object root = packages.createInstanceWithArguments(
                new Object[] {ods.toAbsolutePath().toUri().toString(), ElementModes.READWRITE});
        XStream settings = Uno.as(XStorage.class, root).openStreamElement(SETTINGS, ElementModes.READWRITE);
        Document xml = read(settings);
        describe(new ViewSettings(xml));
        write(xml, settings);
        Uno.as(XTransactedObject.class, root).commit();
        Uno.as(com.sun.star.lang.XComponent.class, root).dispose();
    }

    private void describe(ViewSettings settings) throws com.sun.star.uno.Exception {
        Page first = book.firstPage();
        settings.begin(first.name());
        for (Page page : book.pages()) {
            CellRangeAddress cursor =
                    page.place(page == first ? book.firstCell() : book.cursors().getOrDefault(page, "A1"));
            settings.page(page.name(), cursor.StartColumn, cursor.StartRow, Zoom.of(page));
        }
    }

    private static Document read(XStream settings) {
        DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
        parsers.setNamespaceAware(true);
        try (InputStream in = new XInputStreamToInputStreamAdapter(settings.getInputStream())) {
            // The parser would close the stream, which the office allows only once.
            return parsers.newDocumentBuilder().parse(new ByteArrayInputStream(in.readAllBytes()));
        } catch (IOException | SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("Cannot read " + SETTINGS, e);
        }
    }

    private static void write(Document xml, XStream settings) throws com.sun.star.uno.Exception {
        Uno.as(XTruncate.class, settings.getOutputStream()).truncate();
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (OutputStream out = new XOutputStreamToOutputStreamAdapter(settings.getOutputStream())) {
            TransformerFactory.newInstance().newTransformer().transform(new DOMSource(xml), new StreamResult(written));
            out.write(written.toByteArray());
        } catch (IOException | TransformerException e) {
            throw new IllegalStateException("Cannot write " + SETTINGS, e);
        }
    }
}
