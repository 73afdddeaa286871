package org.snugsheet.sheets;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The view settings in the {@code settings.xml} of an OpenDocument file, as LibreOffice writes and reads them: a map of named
 * items in the set {@code ooo:view-settings} (OpenDocument 1.3 part 3, 3.10 for the form; the names are the office’s own).
 */
final class ViewSettings {
    private static final String CONFIG = "urn:oasis:names:tc:opendocument:xmlns:config:1.0";

    // Of the ways to zoom that the office numbers, the one by a percentage.
    private static final String PERCENT = "0";

    private final Document xml;
    private final Element view;
    private final Element tables;

    ViewSettings(Document xml) {
        this.xml = xml;
        Element views = add(set("ooo:view-settings"), "config-item-map-indexed", "Views");
        this.view = add(views, "config-item-map-entry", "");
        item(view, "ViewId", "string", "view1");
        this.tables = add(view, "config-item-map-named", "Tables");
    }

    /** The page that is seen on opening. */
    void begin(String page) {
        item(view, "ActiveTable", "string", page);
        item(view, "ShowGrid", "boolean", "false");
    }

    /** Where the cursor is on a page, counted from 0, and the zoom, in percent. */
    void page(String name, int column, int row, int zoom) {
        Element page = add(tables, "config-item-map-entry", name);
        item(page, "CursorPositionX", "int", String.valueOf(column));
        item(page, "CursorPositionY", "int", String.valueOf(row));
        item(page, "ZoomType", "short", PERCENT);
        item(page, "ZoomValue", "int", String.valueOf(zoom));
        item(page, "ShowGrid", "boolean", "false");
    }

    private Element set(String name) {
        NodeList sets = xml.getElementsByTagNameNS(CONFIG, "config-item-set");
        for (int i = 0; i < sets.getLength(); i++) {
            if (sets.item(i) instanceof Element set
                    && set.getAttributeNS(CONFIG, "name").equals(name)) {
                return set;
            }
        }
        throw new IllegalStateException("The office wrote no " + name);
    }

    private void item(Element into, String name, String type, String value) {
        Element item = add(into, "config-item", name);
        item.setAttributeNS(CONFIG, "config:type", type);
        item.setTextContent(value);
    }

    private Element add(Element into, String kind, String name) {
        Element element = xml.createElementNS(CONFIG, "config:" + kind);
        if (!name.isEmpty()) {
            element.setAttributeNS(CONFIG, "config:name", name);
        }
        into.appendChild(element);
        return element;
    }
}
