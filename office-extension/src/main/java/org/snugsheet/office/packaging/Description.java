package org.snugsheet.office.packaging;

import java.util.Map;
import java.util.TreeMap;
import org.snugsheet.office.menu.Reference;
import org.snugsheet.office.words.Language;
import org.w3c.dom.Element;

/**
 * What the office wants to know of an extension before it installs it: its {@code description.xml}, the texts that it names,
 * and the feed by which an installed one learns of a newer one.
 *
 * @param version such as {@code 0.1.0}
 * @param site where releases are published, without a slash at the end
 */
record Description(String version, String site) {

    private static final String OLDEST_OFFICE = "7.4";
    private static final String SCHEMA = "http://openoffice.org/extensions/description/2006";
    private static final String UPDATE_SCHEMA = "http://openoffice.org/extensions/update/2006";
    /** Pictures of 42 by 42 pixels, in {@code src/main/oxt}. */
    private static final String ICON = "icons/icon.png";

    private static final String ICON_FOR_HIGH_CONTRAST = "icons/icon-high-contrast.png";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** The name of the feed, beside the releases. */
    static final String FEED = "snugsheet.update.xml";

    /** The files by their paths in the extension. */
    Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        files.put("description.xml", xml());
        for (Language language : Language.values()) {
            files.put(text(language), language.words(PackageWords.DESCRIPTION) + "\n");
        }
        return files;
    }

    private static String text(Language language) {
        return "description/" + language.code() + ".txt";
    }

    private String xml() {
        XmlText xml = new XmlText(
                "description",
                Map.of(
                        "xmlns", SCHEMA,
                        "xmlns:d", SCHEMA,
                        "xmlns:l", "http://libreoffice.org/extensions/description/2011",
                        "xmlns:xlink", XLINK));
        Element root = xml.root();
        xml.child(root, "identifier", Map.of("value", Reference.EXTENSION));
        xml.child(root, "version", Map.of("value", version));
        xml.child(root, "platform", Map.of("value", "all"));
        xml.child(
                xml.child(root, "dependencies", Map.of()),
                "l:LibreOffice-minimal-version",
                Map.of("value", OLDEST_OFFICE, "d:name", "LibreOffice " + OLDEST_OFFICE));
        xml.child(xml.child(root, "update-information", Map.of()), "src", Map.of("xlink:href", site + "/" + FEED));
        license(xml, root);
        Element publisher = xml.child(root, "publisher", Map.of());
        Element notes = xml.child(root, "release-notes", Map.of());
        Element names = xml.child(root, "display-name", Map.of());
        Element texts = xml.child(root, "extension-description", Map.of());
        for (Language language : Language.values()) {
            String name = language.words(PackageWords.NAME);
            named(xml, publisher, language, Map.of("xlink:href", site)).setTextContent(name);
            xml.child(notes, "src", Map.of("lang", language.code(), "xlink:href", releaseNotes(language)));
            named(xml, names, language, Map.of()).setTextContent(name);
            xml.child(texts, "src", Map.of("lang", language.code(), "xlink:href", text(language)));
        }
        Element icons = xml.child(root, "icon", Map.of());
        xml.child(icons, "default", Map.of("xlink:href", ICON));
        xml.child(icons, "high-contrast", Map.of("xlink:href", ICON_FOR_HIGH_CONTRAST));
        return xml.text();
    }

    private static void license(XmlText xml, Element root) {
        Element license = xml.child(
                xml.child(root, "registration", Map.of()),
                "simple-license",
                Map.of("accept-by", "admin", "default-license-id", "apache", "suppress-on-update", "true"));
        xml.child(license, "license-text", Map.of("xlink:href", "LICENSE", "lang", "en", "license-id", "apache"));
    }

    private static Element named(XmlText xml, Element parent, Language language, Map<String, String> more) {
        Element name = xml.child(parent, "name", Map.of("lang", language.code()));
        more.forEach(name::setAttribute);
        return name;
    }

    private String releaseNotes(Language language) {
        return site + "/release-notes/" + version + "_" + language.code() + ".html";
    }

    /** What is published at the address of the feed with this release. */
    String feed() {
        XmlText xml =
                new XmlText("description", Map.of("xmlns", UPDATE_SCHEMA, "xmlns:d", SCHEMA, "xmlns:xlink", XLINK));
        xml.child(xml.root(), "identifier", Map.of("value", Reference.EXTENSION));
        xml.child(xml.root(), "version", Map.of("value", version));
        xml.child(
                xml.child(xml.root(), "update-download", Map.of()),
                "src",
                Map.of("xlink:href", site + "/snugsheet-" + version + ".oxt"));
        Element notes = xml.child(xml.root(), "release-notes", Map.of());
        for (Language language : Language.values()) {
            xml.child(notes, "src", Map.of("lang", language.code(), "xlink:href", releaseNotes(language)));
        }
        return xml.text();
    }
}
