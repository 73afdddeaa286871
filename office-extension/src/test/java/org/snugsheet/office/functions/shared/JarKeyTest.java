package org.snugsheet.office.functions.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.summary.TypedJar;

class JarKeyTest {

    /** Each pair of jars that differ in one thing, in the place of a cell, in −0, or not at all: equal where the records are. */
    @Test
    void keysAreEqualWhereTheJarsAre() {
        List<TypedJar> jars = new ArrayList<>();
        for (int copy = 0; copy < 2; copy++) {
            for (Optional<String> name : List.of(Optional.<String>empty(), Optional.of(""), Optional.of("wool"))) {
                jars.add(new TypedJar(name, cells(0, 5), cells(40, 35), cells(2), mark(1), Scale.CELSIUS));
            }
            for (List<Entry> cells : List.of(cells(), cells(0), cells(-0.0), cells(0, 5, 10), List.of(Entry.of("0")))) {
                jars.add(new TypedJar(Optional.empty(), cells, cells(40, 35), cells(2), mark(1), Scale.CELSIUS));
                jars.add(new TypedJar(Optional.empty(), cells(0, 5), cells, cells(2), mark(1), Scale.CELSIUS));
                jars.add(new TypedJar(Optional.empty(), cells(0, 5), cells(40, 35), cells, mark(1), Scale.CELSIUS));
            }
            jars.add(new TypedJar(Optional.empty(), cells(0), cells(5, 40, 35), cells(2), mark(1), Scale.CELSIUS));
            jars.add(new TypedJar(
                    Optional.empty(), List.of(Entry.of("-")), cells(40, 35), cells(2), mark(1), Scale.CELSIUS));
            jars.add(new TypedJar(Optional.empty(), cells(0, 5), cells(40, 35), cells(2), mark(0.5), Scale.CELSIUS));
            jars.add(new TypedJar(Optional.empty(), cells(0, 5), cells(40, 35), cells(2), mark(1), Scale.FAHRENHEIT));
        }
        for (TypedJar one : jars) {
            for (TypedJar other : jars) {
                JarKey key = new JarKey(one);
                JarKey otherKey = new JarKey(other);
                assertEquals(one.equals(other), key.equals(otherKey), one + "\n" + other);
                assertTrue(!key.equals(otherKey) || key.hashCode() == otherKey.hashCode(), one.toString());
            }
        }
    }

    @Test
    void aNewPartOfAJarBelongsToItsKeyToo() {
        assertEquals(6, TypedJar.class.getRecordComponents().length, "Add it to JarKey, and here.");
    }

    private static List<Entry> cells(double... numbers) {
        List<Entry> cells = new ArrayList<>();
        for (double number : numbers) {
            cells.add(Entry.of(number));
        }
        return cells;
    }

    private static Graduation mark(double degrees) {
        return Graduation.of(degrees, Scale.CELSIUS);
    }
}
