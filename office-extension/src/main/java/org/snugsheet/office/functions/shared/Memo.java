package org.snugsheet.office.functions.shared;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Remembers the last few results by what they were made from, so that the functions of one jar fit it once, and a plan that nobody changed
 * is not worked out again.
 *
 * <p>The key is what was typed, never where: two cells with the same readings share a result, and a changed reading has
 * another key. A refusal is not remembered.
 *
 * @param <K> what a result is made from, a value with equality
 * @param <V> the result, immutable
 */
public final class Memo<K, V> {

    private final int size;
    private final Function<K, V> maker;
    private final Map<K, V> results;

    /**
     * A memory that is still empty.
     *
     * @param size how many results it holds; the one not asked for the longest is forgotten first
     * @param maker makes a result, the same one whenever it is asked
     */
    public Memo(int size, Function<K, V> maker) {
        this.size = size;
        this.maker = maker;
        this.results = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > Memo.this.size;
            }
        };
    }

    /**
     * The result for a key, made outside the lock: at worst two threads make the same one.
     *
     * @param key what it is made from
     * @return the result, remembered or made
     */
    public V get(K key) {
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
