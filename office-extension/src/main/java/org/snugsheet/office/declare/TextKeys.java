package org.snugsheet.office.declare;

import java.lang.reflect.Field;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the constants that hold the texts of a family’s arguments. */
final class TextKeys {

    private TextKeys() {}

    /**
     * A constant.
     *
     * @param key what its text is called in the translations, such as {@code Texts.TIMES}
     * @param temperature what it asks the temperature of, if it asks for one
     */
    record Constant(String key, Optional<TemperatureOf> temperature) {}

    static Map<String, Constant> of(Class<?> family) {
        Map<String, Constant> keys = new HashMap<>();
        for (Class<?> texts : family.getAnnotation(Family.class).texts()) {
            for (Field constant : texts.getDeclaredFields()) {
                if (constant.getType() == String.class) {
                    keys.put(
                            text(constant),
                            new Constant(
                                    texts.getSimpleName() + "." + constant.getName(),
                                    Optional.ofNullable(constant.getAnnotation(TemperatureOf.class))));
                }
            }
        }
        return keys;
    }

    private static String text(Field constant) {
        try {
            constant.setAccessible(true);
            return String.valueOf(constant.get(null));
        } catch (IllegalAccessException refused) {
            throw new IllegalStateException("No text to be read: " + constant, refused);
        }
    }
}
