package org.snugsheet.office.sharing;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.sharing.Notes.CellKey;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Adds notes to the cells of an OpenDocument file as the office wrote it (OpenDocument 1.3, part 3: 9.1 tables, 14.1 annotations).
 * Rows and cells that are repeated are taken apart where one of them gets a note.
 */
final class NotesInOdf {

    private static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
    private static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
    private static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";
    private static final String DRAWING = "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0";
    private static final String SVG = "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0";

    private static final String ROWS_ALIKE = "number-rows-repeated";
    private static final String CELLS_ALIKE = "number-columns-repeated";

    private NotesInOdf() {}

    /** Adds the notes of some of the sheets. */
    static void add(Document content, List<NotesToAdd> notes) throws UnexpectedFileException {
        Element body = UnexpectedFileException.unless(only(content.getDocumentElement(), OFFICE, "body"), "body");
        Element spreadsheet = UnexpectedFileException.unless(only(body, OFFICE, "spreadsheet"), "spreadsheet");
        List<Element> sheets = children(spreadsheet, TABLE, "table");
        for (NotesToAdd some : notes) {
            if (some.sheet() >= sheets.size()) {
                throw new UnexpectedFileException("sheet " + some.sheet());
            }
            add(sheets.get(some.sheet()), some);
        }
    }

    private static void add(Element sheet, NotesToAdd some) throws UnexpectedFileException {
        Element model = model(cell(rows(sheet), some.first()));
        // All rows again: that of the model may have been taken from several alike.
        Lines rows = rows(sheet);
        Optional<Lines> cells = Optional.empty();
        int row = -1;
        for (Map.Entry<CellKey, String> note : some.others().entrySet()) {
            if (cells.isEmpty() || note.getKey().row() != row) {
                row = note.getKey().row();
                cells = Optional.of(cells(rows.at(row)));
            }
            Element cell = cells.get().at(note.getKey().column());
            cell.insertBefore(like(model, note.getValue()), cell.getFirstChild());
        }
    }

    private static Element cell(Lines rows, CellKey at) throws UnexpectedFileException {
        return cells(rows.at(at.row())).at(at.column());
    }

    private static Element model(Element cell) throws UnexpectedFileException {
        Element model = (Element) UnexpectedFileException.unless(only(cell, OFFICE, "annotation"), "first note")
                .cloneNode(true);
        // Where its drawing would be is left to the office.
        for (String place : List.of("caption-point-x", "caption-point-y")) {
            model.removeAttributeNS(DRAWING, place);
        }
        model.removeAttributeNS(SVG, "x");
        model.removeAttributeNS(SVG, "y");
        return model;
    }

    private static Element like(Element model, String text) throws UnexpectedFileException {
        Element note = (Element) model.cloneNode(true);
        List<Element> paragraphs = children(note, TEXT, "p");
        if (paragraphs.isEmpty()) {
            throw new UnexpectedFileException("a note without a text");
        }
        Element paragraph = paragraphs.get(0);
        paragraphs.forEach(note::removeChild);
        while (paragraph.getFirstChild() != null) {
            paragraph.removeChild(paragraph.getFirstChild());
        }
        for (String line : text.split("\n", -1)) {
            Element written = (Element) paragraph.cloneNode(false);
            write(line, written);
            note.appendChild(written);
        }
        return note;
    }

    /** Of several blanks in a row, a reader counts the first only. */
    private static void write(String line, Element paragraph) {
        Document document = paragraph.getOwnerDocument();
        StringBuilder letters = new StringBuilder();
        char before = ' ';
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == ' ' && before == ' ') {
                paragraph.appendChild(document.createTextNode(letters.toString()));
                letters.setLength(0);
                paragraph.appendChild(document.createElementNS(TEXT, paragraph.getPrefix() + ":s"));
            } else {
                letters.append(letter);
            }
            before = letter;
        }
        paragraph.appendChild(document.createTextNode(letters.toString()));
    }

    private static Lines rows(Element sheet) {
        List<Element> rows = new ArrayList<>();
        collectRows(sheet, rows);
        return new Lines(rows, ROWS_ALIKE);
    }

    /** Rows may be inside groups and inside the rows that are printed on each page. */
    private static void collectRows(Element in, List<Element> rows) {
        for (Element child : children(in)) {
            if (is(child, TABLE, "table-row")) {
                rows.add(child);
            } else if (List.of("table-rows", "table-row-group", "table-header-rows")
                    .contains(child.getLocalName())) {
                collectRows(child, rows);
            }
        }
    }

    private static Lines cells(Element row) {
        List<Element> cells = new ArrayList<>();
        for (Element child : children(row)) {
            if (is(child, TABLE, "table-cell") || is(child, TABLE, "covered-table-cell")) {
                cells.add(child);
            }
        }
        return new Lines(cells, CELLS_ALIKE);
    }

    /** Rows, or the cells of one, each of which may be repeated; asked for from the first to the last. */
    private static final class Lines {

        private final Iterator<Element> further;
        private final String alike;
        private Optional<Element> last = Optional.empty();
        private int from;
        private int count;

        Lines(List<Element> all, String alike) {
            this.further = all.iterator();
            this.alike = alike;
        }

        /** The one at a place, which is not repeated afterwards. */
        Element at(int place) throws UnexpectedFileException {
            while (from + count <= place) {
                if (!further.hasNext()) {
                    throw new UnexpectedFileException(alike + " " + place);
                }
                from += count;
                last = Optional.of(further.next());
                count = number(last.get());
            }
            Element wanted = last.orElseThrow();
            int before = place - from;
            int after = count - before - 1;
            Node in = wanted.getParentNode();
            if (before > 0) {
                in.insertBefore(repeated((Element) wanted.cloneNode(true), before), wanted);
            }
            repeated(wanted, 1);
            if (after > 0) {
                Element rest = repeated((Element) wanted.cloneNode(true), after);
                in.insertBefore(rest, wanted.getNextSibling());
                last = Optional.of(rest);
                from = place + 1;
                count = after;
            } else {
                from = place;
                count = 1;
            }
            return wanted;
        }

        private int number(Element line) {
            String number = line.getAttributeNS(TABLE, alike);
            return number.isEmpty() ? 1 : Integer.parseInt(number);
        }

        private Element repeated(Element line, int times) {
            if (times == 1) {
                line.removeAttributeNS(TABLE, alike);
            } else {
                line.setAttributeNS(TABLE, line.getPrefix() + ":" + alike, String.valueOf(times));
            }
            return line;
        }
    }

    private static Optional<Element> only(Element in, String space, String name) {
        return children(in, space, name).stream().findFirst();
    }

    private static List<Element> children(Element in, String space, String name) {
        return children(in).stream().filter(child -> is(child, space, name)).toList();
    }

    private static List<Element> children(Element in) {
        List<Element> children = new ArrayList<>();
        for (Node child = in.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }

    private static boolean is(Element element, String space, String name) {
        return name.equals(element.getLocalName()) && space.equals(element.getNamespaceURI());
    }
}
