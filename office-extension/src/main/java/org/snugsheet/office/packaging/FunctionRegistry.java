package org.snugsheet.office.packaging;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.words.Language;
import org.w3c.dom.Element;

/** The registration of all functions with their names and texts, which the office keeps under CalcAddIns. */
final class FunctionRegistry {

    // One of the office’s closed list; any other name would be shown as this one.
    private static final String CATEGORY = "Add-In";

    private final XmlText xml = new XmlText(
            "oor:component-data",
            Map.of(
                    "xmlns:oor", "http://openoffice.org/2001/registry",
                    "xmlns:xs", "http://www.w3.org/2001/XMLSchema",
                    "oor:name", "CalcAddIns",
                    "oor:package", "org.openoffice.Office"));

    private FunctionRegistry() {}

    static String of(List<Class<?>> families) {
        FunctionRegistry registry = new FunctionRegistry();
        Element info = registry.node(registry.xml.root(), "AddInInfo");
        Map<String, Element> services = new HashMap<>();
        for (Class<?> family : families) {
            Element functions = services.computeIfAbsent(
                    family.getAnnotation(Family.class).service(),
                    service -> registry.node(registry.entry(info, service), "AddInFunctions"));
            FunctionDeclaration.of(family).forEach(function -> registry.add(functions, function));
        }
        return registry.xml.text();
    }

    private void add(Element functions, FunctionDeclaration function) {
        Element entry = entry(functions, function.method().getName());
        translated(entry, "DisplayName", any -> function.name());
        translated(entry, "Description", function::description);
        xml.child(property(entry, "Category"), "value", Map.of()).setTextContent(CATEGORY);
        translated(entry, "CompatibilityName", any -> function.name());
        Element parameters = node(entry, "Parameters");
        for (FunctionDeclaration.ArgumentDeclaration argument : function.arguments()) {
            Element parameter = entry(parameters, argument.name());
            translated(parameter, "DisplayName", argument::name);
            translated(parameter, "Description", argument::text);
        }
    }

    private Element node(Element parent, String name) {
        return xml.child(parent, "node", Map.of("oor:name", name));
    }

    private Element entry(Element parent, String name) {
        return xml.child(parent, "node", Map.of("oor:name", name, "oor:op", "replace"));
    }

    private Element property(Element parent, String name) {
        return xml.child(parent, "prop", Map.of("oor:name", name));
    }

    // English must always be there: an office set to “English function names” would otherwise show a function as
    // unknown.
    private void translated(Element parent, String name, Function<Language, String> words) {
        Element property = property(parent, name);
        for (Language language : Language.values()) {
            xml.child(property, "value", Map.of("xml:lang", language.code())).setTextContent(words.apply(language));
        }
    }
}
