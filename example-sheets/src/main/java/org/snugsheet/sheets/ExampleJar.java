package org.snugsheet.sheets;

import java.util.Optional;

/**
 * A jar of warm water of an example.
 *
 * @param name what the class calls it
 * @param wrap what it is wrapped in; nothing for the bare one
 */
record ExampleJar(String name, Optional<Wrap> wrap) {

    /**
     * One layer around a jar.
     *
     * @param material the name of the material, as the cell functions know it
     * @param millimetres how thick it is
     */
    record Wrap(String material, double millimetres) {}

    static ExampleJar bare(String name) {
        return new ExampleJar(name, Optional.empty());
    }

    static ExampleJar wrapped(String name, double millimetres, String material) {
        return new ExampleJar(name, Optional.of(new Wrap(material, millimetres)));
    }
}
