package org.snugsheet.office.declare;

import java.lang.reflect.Field;
import java.util.HashMap;
import java.util.Map;

/** What the texts of a family’s arguments are called in the translations: {@code Words.TIMES} for that constant’s text. */
final class TextKeys {

    private TextKeys() {}

    static Map<String, String> of(Class<?> family) {
        Map<String, String> keys = new HashMap<>();
        for (Class<?> words : family.getAnnotation(Family.class).words()) {
            for (Field constant : words.getDeclaredFields()) {
                if (constant.getType() == String.class) {
                    keys.put(text(constant), words.getSimpleName() + "." + constant.getName());
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
