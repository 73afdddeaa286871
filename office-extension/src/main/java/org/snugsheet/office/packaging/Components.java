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

    static String of(List<Class<?>> families) {
        XmlText xml = new XmlText("components", Map.of("xmlns", "http://openoffice.org/2010/uno-components"));
        Element component = xml.child(
                xml.root(), "component", Map.of("loader", "com.sun.star.loader.Java2", "uri", "snugsheet.jar"));
        Set<String> listed = new HashSet<>();
        for (Class<?> family : families) {
            Family declared = family.getAnnotation(Family.class);
            if (!listed.add(declared.service())) {
                continue;
            }
            Element implementation = xml.child(
                    component,
                    "implementation",
                    Map.of("name", declared.implementation().getName()));
            xml.child(implementation, "service", Map.of("name", declared.service()));
        }
        Element menu = xml.child(component, "implementation", Map.of("name", MenuHandler.class.getName()));
        xml.child(menu, "service", Map.of("name", MenuHandler.SERVICE));
        return xml.text();
    }
}
