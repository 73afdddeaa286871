package org.snugsheet.office.packaging;

import java.util.LinkedHashMap;
import java.util.Map;
import org.snugsheet.office.menu.MenuHandler;
import org.w3c.dom.Element;

/** The list of services in the jar, which the office reads without starting Java. */
final class Components {

    private Components() {}

    /** The services of functions and the menu. */
    static String withMenu(Map<String, Class<?>> services) {
        Map<String, Class<?>> all = new LinkedHashMap<>(services);
        all.put(MenuHandler.SERVICE, MenuHandler.class);
        return of(all);
    }

    /** Services by their names, each with its class. */
    static String of(Map<String, Class<?>> services) {
        XmlText xml = new XmlText("components", Map.of("xmlns", "http://openoffice.org/2010/uno-components"));
        Element component = xml.child(
                xml.root(), "component", Map.of("loader", "com.sun.star.loader.Java2", "uri", "snugsheet.jar"));
        services.forEach((service, implementation) -> {
            Element listed = xml.child(component, "implementation", Map.of("name", implementation.getName()));
            xml.child(listed, "service", Map.of("name", service));
        });
        return xml.text();
    }
}
