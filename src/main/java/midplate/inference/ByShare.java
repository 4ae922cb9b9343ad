package midplate.inference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * Values by share of the strong solvent [% v/v]. Nearly all shares that are asked about are whole quarters: those have places of their
 * own, which is several times faster than a map. Safe to share between threads.
 *
 * @param <V> what is kept, never changed
 */
final class ByShare<V> {
    private static final int PER_PERCENT = 4;
    /** Shares at which something is kept. */
    private static final int MOST = 600;

    private final AtomicReferenceArray<V> quarters = new AtomicReferenceArray<>(100 * PER_PERCENT + 1);
    private final Map<Long, V> others = new ConcurrentHashMap<>();
    private final AtomicInteger size = new AtomicInteger();

    /** What is kept at a share. */
    @Nullable
    V get(double percent) {
        int quarter = quarter(percent);
        return quarter >= 0 ? quarters.get(quarter) : others.get(ShareKey.of(percent));
    }

    /** Keeps a value, while there are not too many. */
    void put(double percent, V value) {
        if (size.get() < MOST) {
            size.incrementAndGet();
            int quarter = quarter(percent);
            if (quarter >= 0) {
                quarters.set(quarter, value);
            } else {
                others.put(ShareKey.of(percent), value);
            }
        }
    }

    /** How many values are kept. */
    int size() {
        return size.get();
    }

    /** The place of a whole quarter of a per cent between 0 and 100; -1 for any other share. */
    private int quarter(double percent) {
        double place = percent * PER_PERCENT;
        int quarter = (int) place;
        return quarter == place && quarter >= 0 && quarter < quarters.length() ? quarter : -1;
    }
}
