package org.snugsheet.sheets;

import java.util.Optional;

/**
 * A jar of warm water of an example.
 *
 * @param name what the class calls it
 * @param wrap what it is wrapped in; nothing for the bare one
 */
record Jar(String name, Optional<Wrap> wrap) {

    /**
     * One layer around a jar.
     *
     * @param material the name of the material, as the cell functions know it
     * @param millimetres how thick it is
     */
    record Wrap(String material, double millimetres) {}

    static Jar bare(String name) {
        return new Jar(name, Optional.empty());
    }

    static Jar wrapped(String name, double millimetres, String material) {
        return new Jar(name, Optional.of(new Wrap(material, millimetres)));
    }
}
