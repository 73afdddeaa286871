package org.snugsheet.office.functions.shared;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Remembers the last few results by what they were made from, so that the functions of one jar fit it once.
 *
 * <p>The key is what was typed, never where: two cells with the same readings share a result, and a changed reading has
 * another key. A refusal is not remembered.
 *
 * @param <K> what a result is made from, a value with equality
 * @param <V> the result, immutable
 */
final class FitMemo<K, V> {

    private final int size;
    private final Function<K, V> maker;
    private final Map<K, V> results;

    FitMemo(int size, Function<K, V> maker) {
        this.size = size;
        this.maker = maker;
        this.results = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > FitMemo.this.size;
            }
        };
    }

    /** The result for a key, made outside the lock: at worst two threads make the same one. */
    V get(K key) {
        synchronized (results) {
            V known = results.get(key);
            if (known != null) {
                return known;
            }
        }
        V made = maker.apply(key);
        synchronized (results) {
            results.put(key, made);
        }
        return made;
    }

    int remembered() {
        synchronized (results) {
            return results.size();
        }
    }
}
