package midplate.inference;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was worked out last: at most so many values, of which the one that was not asked for the longest makes room. Safe to
 * share between threads; two that ask for the same at once may both work it out.
 *
 * @param <K> what it is asked by
 * @param <V> what was worked out, never changed
 */
public final class KeptLatest<K, V> {
    private final Map<K, V> kept;

    /** For at most so many values. */
    public KeptLatest(int most) {
        kept = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** The value kept, or else worked out now. */
    public V get(K key, Supplier<V> made) {
        synchronized (kept) {
            V known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        V value = made.get(); // outside, so that nobody waits
        synchronized (kept) {
            V other = kept.putIfAbsent(key, value);
            return other != null ? other : value;
        }
    }
}
