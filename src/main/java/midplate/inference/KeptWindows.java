package midplate.inference;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The tables of the windows asked about last, for all threads. Together they keep about {@value #MOST_ROWS} shares [100 MB]: when
 * there are more, the windows not asked about for the longest make room, so that odd questions cannot fill the memory and
 * usual ones find their tables.
 */
final class KeptWindows {
    private static final int MOST_ROWS = 4000;
    private static final int MOST_WINDOWS = 200;

    private final Map<WindowChances.Window, WindowChances> windows = new LinkedHashMap<>(16, 0.75f, true);

    /** The tables of a window in a pair of that model. */
    synchronized WindowChances get(WindowChances.Window window, PairModel model) {
        WindowChances asked = windows.computeIfAbsent(window, each -> WindowChances.of(each, model));
        int rows = 0;
        for (WindowChances each : windows.values()) {
            rows += each.size();
        }
        Iterator<WindowChances> oldest = windows.values().iterator();
        while (rows > MOST_ROWS || windows.size() > MOST_WINDOWS) {
            rows -= oldest.next().size();
            oldest.remove();
        }
        return asked;
    }
}
