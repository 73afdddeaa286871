package org.snugsheet.office.sheets.shared;

import java.util.Optional;

/**
 * A jar of warm water of an example.
 *
 * @param name what the class calls it
 * @param wrap what it is wrapped in; nothing for the bare one
 */
public record ExampleJar(String name, Optional<Wrap> wrap) {

    /**
     * One layer around a jar.
     *
     * @param material the name of the material, as the cell functions know it
     * @param millimeters how thick it is
     */
    public record Wrap(String material, double millimeters) {}

    public static ExampleJar bare(String name) {
        return new ExampleJar(name, Optional.empty());
    }

    public static ExampleJar wrapped(String name, double millimeters, String material) {
        return new ExampleJar(name, Optional.of(new Wrap(material, millimeters)));
    }
}
