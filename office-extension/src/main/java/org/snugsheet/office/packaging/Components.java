package org.snugsheet.office.packaging;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.menu.MenuHandler;
import org.w3c.dom.Element;

/** The list of services in the jar, which the office reads without starting Java. */
final class Components {

    private Components() {}

    /** The services of functions and the menu. */
    static String withMenu(List<Class<?>> families) {
        Map<String, Class<?>> services = services(families);
        services.put(MenuHandler.SERVICE, MenuHandler.class);
        return text(services);
    }

    /** The services of functions alone. */
    static String of(List<Class<?>> families) {
        return text(services(families));
    }

    /** Each service with its class; several families may share one. */
    private static Map<String, Class<?>> services(List<Class<?>> families) {
        Map<String, Class<?>> services = new LinkedHashMap<>();
        for (Class<?> family : families) {
            Family declared = family.getAnnotation(Family.class);
            services.putIfAbsent(declared.service(), declared.implementation());
        }
        return services;
    }

    private static String text(Map<String, Class<?>> services) {
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
