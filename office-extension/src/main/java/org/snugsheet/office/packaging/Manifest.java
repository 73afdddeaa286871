package org.snugsheet.office.packaging;

import java.util.List;
import java.util.Map;

/** The manifest: what the office does with each file of the extension. */
final class Manifest {

    private static final String TYPES = "application/vnd.sun.star.uno-typelibrary;type=RDB";
    private static final String COMPONENTS = "application/vnd.sun.star.uno-components";
    private static final String BASIC = "application/vnd.sun.star.basic-library";
    private static final String CONFIGURATION = "application/vnd.sun.star.configuration-data";

    private Manifest() {}

    /** The files of functions and of the menu. */
    static String withMenu(List<String> interfaceFiles) {
        XmlText xml = functions(interfaceFiles);
        add(xml, CONFIGURATION, "Addons.xcu");
        add(xml, CONFIGURATION, "Accelerators.xcu");
        add(xml, CONFIGURATION, "ProtocolHandler.xcu");
        add(xml, BASIC, SetUpCheck.folder() + "/");
        return xml.text();
    }

    /** The files of functions alone. */
    static String of(List<String> interfaceFiles) {
        return functions(interfaceFiles).text();
    }

    private static XmlText functions(List<String> interfaceFiles) {
        XmlText xml = new XmlText("manifest:manifest", Map.of("xmlns:manifest", "http://openoffice.org/2001/manifest"));
        interfaceFiles.forEach(file -> add(xml, TYPES, file));
        add(xml, COMPONENTS, "snugsheet.components");
        add(xml, CONFIGURATION, "CalcAddIns.xcu");
        return xml;
    }

    private static void add(XmlText xml, String type, String path) {
        xml.child(xml.root(), "manifest:file-entry", Map.of("manifest:media-type", type, "manifest:full-path", path));
    }
}
