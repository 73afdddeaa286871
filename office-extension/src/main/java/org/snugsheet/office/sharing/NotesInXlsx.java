package org.snugsheet.office.sharing;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.sharing.Notes.CellKey;
import org.snugsheet.office.uno.CellName;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Adds notes to the cells of an .xlsx file as the office wrote it (ECMA-376: part 1, 18.7 comments; part 4, 19 their drawings; part 2
 * relationships). What says that a sheet has notes at all is there already with the first of them.
 */
final class NotesInXlsx {

    private static final String WORKBOOK = "xl/workbook.xml";
    private static final String RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String ANY = "*";

    /** The places in an anchor that hold columns, and those that hold rows; the others are offsets. */
    private static final List<Integer> COLUMNS = List.of(0, 4);

    private static final List<Integer> ROWS = List.of(2, 6);

    private final FileParts parts;

    private NotesInXlsx(FileParts parts) {
        this.parts = parts;
    }

    /** Adds the notes of some of the sheets. */
    static void add(FileParts parts, List<NotesToAdd> notes) throws UnexpectedFileException {
        NotesInXlsx file = new NotesInXlsx(parts);
        List<String> sheets = new ArrayList<>();
        for (Element sheet : elements(file.part(WORKBOOK), "sheet")) {
            sheets.add(file.related(WORKBOOK, "Id", sheet.getAttributeNS(RELATION, "id")));
        }
        for (NotesToAdd some : notes) {
            if (some.sheet() >= sheets.size()) {
                throw new UnexpectedFileException("sheet " + some.sheet());
            }
            file.add(sheets.get(some.sheet()), some);
        }
    }

    private void add(String sheet, NotesToAdd some) throws UnexpectedFileException {
        String texts = related(sheet, "Type", "comments");
        String drawings = related(sheet, "Type", "vmlDrawing");
        addTexts(texts, some);
        addDrawings(drawings, some);
    }

    private void addTexts(String name, NotesToAdd some) throws UnexpectedFileException {
        Document all = part(name);
        String at = CellName.of(some.first().column(), some.first().row());
        Element model = UnexpectedFileException.unless(
                elements(all, "comment").stream()
                        .filter(one -> one.getAttribute("ref").equals(at))
                        .findFirst(),
                at);
        for (Map.Entry<CellKey, String> note : some.others().entrySet()) {
            Element comment = (Element) model.cloneNode(true);
            comment.setAttribute(
                    "ref", CellName.of(note.getKey().column(), note.getKey().row()));
            NodeList words = comment.getElementsByTagNameNS(ANY, "t");
            if (words.getLength() != 1) {
                throw new UnexpectedFileException(words.getLength() + " texts");
            }
            Element text = (Element) words.item(0);
            text.setTextContent(note.getValue());
            text.setAttribute("xml:space", "preserve");
            model.getParentNode().appendChild(comment);
        }
        parts.replace(name, all);
    }

    private void addDrawings(String name, NotesToAdd some) throws UnexpectedFileException {
        Document all = part(name);
        Element model = UnexpectedFileException.unless(
                elements(all, "shape").stream()
                        .filter(one -> isAt(one, some.first()))
                        .findFirst(),
                "drawing");
        int number = 0;
        for (CellKey cell : some.others().keySet()) {
            Element shape = (Element) model.cloneNode(true);
            number++;
            shape.setAttribute("id", model.getAttribute("id") + "_" + number);
            write(shape, "Row", String.valueOf(cell.row()));
            write(shape, "Column", String.valueOf(cell.column()));
            String moved = moved(
                    text(shape, "Anchor").orElse(""),
                    cell.column() - some.first().column(),
                    cell.row() - some.first().row());
            write(shape, "Anchor", moved);
            model.getParentNode().appendChild(shape);
        }
        parts.replace(name, all);
    }

    /** The rectangle of a drawing, moved along with its cell. */
    private static String moved(String anchor, int columns, int rows) throws UnexpectedFileException {
        String[] places = anchor.split(",", -1);
        try {
            for (int i = 0; i < places.length; i++) {
                int by = COLUMNS.contains(i) ? columns : ROWS.contains(i) ? rows : 0;
                places[i] = String.valueOf(Integer.parseInt(places[i].strip()) + by);
            }
        } catch (NumberFormatException other) {
            throw new UnexpectedFileException("anchor " + anchor);
        }
        return String.join(", ", places);
    }

    private static boolean isAt(Element shape, CellKey cell) {
        return text(shape, "Row").equals(Optional.of(String.valueOf(cell.row())))
                && text(shape, "Column").equals(Optional.of(String.valueOf(cell.column())));
    }

    private static Optional<String> text(Element in, String name) {
        NodeList found = in.getElementsByTagNameNS(ANY, name);
        return found.getLength() == 0
                ? Optional.empty()
                : Optional.of(found.item(0).getTextContent().strip());
    }

    private static void write(Element in, String name, String text) {
        in.getElementsByTagNameNS(ANY, name).item(0).setTextContent(text);
    }

    /** The part that another one names in its relationships. */
    private String related(String part, String attribute, String value) throws UnexpectedFileException {
        int file = part.lastIndexOf('/') + 1;
        String relations = part.substring(0, file) + "_rels/" + part.substring(file) + ".rels";
        for (Element one : elements(part(relations), "Relationship")) {
            String given = one.getAttribute(attribute);
            if (given.substring(given.lastIndexOf('/') + 1).equals(value)) {
                return URI.create("/" + part)
                        .resolve(one.getAttribute("Target"))
                        .getPath()
                        .substring(1);
            }
        }
        throw new UnexpectedFileException(value + " of " + part);
    }

    private Document part(String name) throws UnexpectedFileException {
        return UnexpectedFileException.unless(parts.xml(name), name);
    }

    private static List<Element> elements(Document part, String name) {
        List<Element> elements = new ArrayList<>();
        NodeList found = part.getElementsByTagNameNS(ANY, name);
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }
}
