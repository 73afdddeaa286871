package org.snugsheet.office.packaging;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.menu.MenuHandler;
import org.w3c.dom.Element;

/** The list of services in the jar, which the office reads without starting Java. */
final class Components {

    private Components() {}

    /** The services of functions and the menu. */
    static String withMenu(List<Class<?>> families) {
        XmlText xml = functions(families);
        service(xml, MenuHandler.class, MenuHandler.SERVICE);
        return xml.text();
    }

    /** The services of functions alone. */
    static String of(List<Class<?>> families) {
        return functions(families).text();
    }

    private static XmlText functions(List<Class<?>> families) {
        XmlText xml = new XmlText("components", Map.of("xmlns", "http://openoffice.org/2010/uno-components"));
        xml.child(xml.root(), "component", Map.of("loader", "com.sun.star.loader.Java2", "uri", "snugsheet.jar"));
        Set<String> listed = new HashSet<>();
        for (Class<?> family : families) {
            Family declared = family.getAnnotation(Family.class);
            if (listed.add(declared.service())) {
                service(xml, declared.implementation(), declared.service());
            }
        }
        return xml;
    }

    private static void service(XmlText xml, Class<?> implementation, String service) {
        Element component = (Element) xml.root().getFirstChild();
        Element listed = xml.child(component, "implementation", Map.of("name", implementation.getName()));
        xml.child(listed, "service", Map.of("name", service));
    }
}
