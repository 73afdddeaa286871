package org.snugsheet.office.functions.shared;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.summary.TypedJar;

/**
 * A jar by which its fit is remembered: equal to another one of which the same was typed.
 *
 * <p>The records of the engine are equal then, too. But Java builds their {@code hashCode} and {@code equals} when they are first called,
 * which took a tenth of a second of the first answer in a sheet.
 */
final class JarKey {

    private final TypedJar jar;
    private final List<Object> typed;

    JarKey(TypedJar jar) {
        this.jar = jar;
        this.typed = new ArrayList<>();
        typed.add(jar.name());
        typed.add(jar.mark().graduation().kelvins());
        typed.add(jar.scale());
        for (List<Entry> column : List.of(jar.minutes(), jar.temperatures(), jar.surroundings())) {
            // Where a column ends, so that no cell counts for another column.
            typed.add(column.size());
            for (Entry entry : column) {
                typed.add(typed(entry));
            }
        }
    }

    private static Object typed(Entry entry) {
        if (entry instanceof Entry.Value number) {
            return number.value();
        }
        return entry instanceof Entry.Text text ? text.text() : Entry.Missing.class;
    }

    TypedJar jar() {
        return jar;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof JarKey key && typed.equals(key.typed);
    }

    @Override
    public int hashCode() {
        return typed.hashCode();
    }
}
