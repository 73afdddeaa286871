package org.snugsheet.office.packaging;

import java.util.Map;
import java.util.function.Function;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.menu.FunctionHelp;
import org.snugsheet.office.menu.MenuHandler;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.menu.MenuWords;
import org.snugsheet.office.menu.SheetLine;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.words.Language;
import org.w3c.dom.Element;

/** The registration of the menu in Calc’s menu bar, of F1 in Calc, and of what handles both. */
final class MenuRegistry {

    private static final String CALC = "com.sun.star.sheet.SpreadsheetDocument";

    private final XmlText xml;

    private MenuRegistry(String component, String branch) {
        xml = new XmlText(
                "oor:component-data",
                Map.of(
                        "xmlns:oor",
                        "http://openoffice.org/2001/registry",
                        "xmlns:xs",
                        "http://www.w3.org/2001/XMLSchema",
                        "oor:name",
                        component,
                        "oor:package",
                        "org.openoffice." + branch));
    }

    static String menu() {
        MenuRegistry registry = new MenuRegistry("Addons", "Office");
        Element ui = registry.node(registry.xml.root(), "AddonUI");
        Element bar = registry.node(ui, "OfficeMenuBar");
        Element menu = registry.entry(bar, "org.snugsheet.menu");
        registry.translated(menu, "Title", MenuWords.TITLE);
        registry.value(menu, "Context", CALC);
        Element lines = registry.node(menu, "Submenu");
        Element images = registry.node(ui, "Images");
        for (MenuLine line : MenuLine.all()) {
            registry.line(lines, line);
            registry.images(images, line);
            if (line.item().filter(MenuItem.BOOK::equals).isPresent()) {
                registry.sheets(lines);
            }
        }
        return registry.xml.text();
    }

    /** A menu in the menu, with a line for each worked sheet. */
    private void sheets(Element lines) {
        // Sorts behind the first line: the office puts shorter names before longer ones.
        Element menu = entry(lines, "line1");
        translated(menu, "Title", MenuWords.SHEETS);
        value(menu, "Context", CALC);
        Element below = node(menu, "Submenu");
        for (WorkedSheet sheet : WorkedSheets.listed()) {
            Element entry = entry(
                    below, String.format("sheet%02d", 1 + WorkedSheets.listed().indexOf(sheet)));
            value(entry, "URL", SheetLine.address(sheet));
            translated(entry, "Title", language -> SheetLine.title(sheet, language));
            value(entry, "Target", "_self");
            value(entry, "Context", CALC);
        }
    }

    // %origin% is the folder of the extension.
    private void images(Element images, MenuLine line) {
        Element image = entry(images, "org.snugsheet." + line.name());
        value(image, "URL", line.address());
        Element pictures = node(image, "UserDefinedImages");
        for (boolean highContrast : new boolean[] {false, true}) {
            String contrast = highContrast ? "HC" : "";
            String small = line.picture(MenuLine.PICTURE_SIZES.get(0), highContrast);
            String big = line.picture(MenuLine.PICTURE_SIZES.get(1), highContrast);
            value(pictures, "ImageSmall" + contrast + "URL", "%origin%/" + small);
            value(pictures, "ImageBig" + contrast + "URL", "%origin%/" + big);
        }
    }

    private void line(Element lines, MenuLine line) {
        Element entry = entry(lines, line.position());
        value(entry, "URL", line.address());
        translated(entry, "Title", line.title());
        value(entry, "Target", "_self");
        value(entry, "Context", CALC);
    }

    static String handler() {
        MenuRegistry registry = new MenuRegistry("ProtocolHandler", "Office");
        Element set = registry.node(registry.xml.root(), "HandlerSet");
        Element handler = registry.entry(set, MenuHandler.class.getName());
        registry.value(handler, "Protocols", MenuItem.PROTOCOL + "*");
        return registry.xml.text();
    }

    /** F1 in Calc. The office asks {@link MenuHandler} first, and shows its own help where that has no answer. */
    static String keys() {
        MenuRegistry registry = new MenuRegistry("Accelerators", "Office");
        Element modules = registry.node(registry.node(registry.xml.root(), "PrimaryKeys"), "Modules");
        Element key = registry.entry(registry.node(modules, CALC), "F1");
        Element command = registry.xml.child(key, "prop", Map.of("oor:name", "Command", "oor:type", "xs:string"));
        // The office looks a key up by its language and falls back on this one.
        registry.xml.child(command, "value", Map.of("xml:lang", "en-US")).setTextContent(FunctionHelp.ADDRESS);
        return registry.xml.text();
    }

    private Element node(Element parent, String name) {
        return xml.child(parent, "node", Map.of("oor:name", name));
    }

    private Element entry(Element parent, String name) {
        return xml.child(parent, "node", Map.of("oor:name", name, "oor:op", "replace"));
    }

    private void value(Element parent, String name, String value) {
        Element property = xml.child(parent, "prop", Map.of("oor:name", name, "oor:type", type(name)));
        xml.child(property, "value", Map.of()).setTextContent(value);
    }

    private static String type(String name) {
        return name.equals("Protocols") ? "oor:string-list" : "xs:string";
    }

    private void translated(Element parent, String name, Phrase words) {
        translated(parent, name, language -> language.words(words));
    }

    private void translated(Element parent, String name, Function<Language, String> words) {
        Element property = xml.child(parent, "prop", Map.of("oor:name", name, "oor:type", "xs:string"));
        for (Language language : Language.values()) {
            xml.child(property, "value", Map.of("xml:lang", language.code())).setTextContent(words.apply(language));
        }
    }
}
