package org.snugsheet.sheets;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The array formulas of a saved document, by the attributes of OpenDocument 1.3 part 3, 19.679 and 19.680. A file may say that an
 * array covers more cells than it was entered into; an office of 2026 takes it by its word.
 */
final class ArrayFormulas {
    private static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";

    private record Cell(String page, int row, int column, int rows, int columns) {
        boolean covers(Cell other) {
            return page.equals(other.page)
                    && other.row >= row
                    && other.row < row + rows
                    && other.column >= column
                    && other.column < column + columns
                    && !(row == other.row && column == other.column);
        }
    }

    private ArrayFormulas() {}

    /** The cells with a formula of their own that lie below an array; none in a sound document. */
    static List<String> overlaps(Path fods) throws IOException, SAXException, ParserConfigurationException {
        DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
        parsers.setNamespaceAware(true);
        Document xml = parsers.newDocumentBuilder().parse(fods.toFile());
        List<Cell> formulas = new ArrayList<>();
        NodeList pages = xml.getElementsByTagNameNS(TABLE, "table");
        for (int i = 0; i < pages.getLength(); i++) {
            if (pages.item(i) instanceof Element page
                    && page.getParentNode().getNodeName().equals("office:spreadsheet")) {
                read(page, formulas);
            }
        }
        List<String> found = new ArrayList<>();
        for (Cell array : formulas) {
            formulas.stream().filter(array::covers).forEach(cell -> found.add(array + " covers " + cell));
        }
        return found;
    }

    private static void read(Element page, List<Cell> formulas) {
        String name = page.getAttributeNS(TABLE, "name");
        NodeList rows = page.getElementsByTagNameNS(TABLE, "table-row");
        int row = 0;
        for (int i = 0; i < rows.getLength(); i++) {
            Element line = (Element) rows.item(i);
            // The office keeps the values of a chart in tables within the cells.
            if (!isOf(page, line)) {
                continue;
            }
            int column = 0;
            for (Node node = line.getFirstChild(); node != null; node = node.getNextSibling()) {
                if (node instanceof Element cell) {
                    if (!cell.getAttributeNS(TABLE, "formula").isEmpty()) {
                        formulas.add(new Cell(
                                name,
                                row,
                                column,
                                number(cell, "number-matrix-rows-spanned"),
                                number(cell, "number-matrix-columns-spanned")));
                    }
                    column += number(cell, "number-columns-repeated");
                }
            }
            row += number(line, "number-rows-repeated");
        }
    }

    private static boolean isOf(Element page, Node row) {
        Node up = row.getParentNode();
        while (up != null && !(up.getLocalName() != null && up.getLocalName().equals("table"))) {
            up = up.getParentNode();
        }
        return up == page;
    }

    private static int number(Element element, String attribute) {
        String value = element.getAttributeNS(TABLE, attribute);
        return value.isEmpty() ? 1 : Integer.parseInt(value);
    }
}
