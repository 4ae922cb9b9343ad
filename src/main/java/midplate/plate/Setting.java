package midplate.plate;

import java.util.Locale;
import java.util.Optional;

/** Where plates are run, which says how much their readings scatter. */
public enum Setting {
    /** An automated laboratory: nothing beyond the scatter already in the measurements that were fitted. */
    AUTOMATED,
    /** One chemist with ruler and jar: reading error and an error shared by all spots of a plate come on top. */
    BENCH,
    /** A class of students: as the bench, and wider. */
    CLASS;

    /** The name in requests and studies: {@code automated}, {@code bench}, {@code class}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The setting of that id, written exactly so; empty when there is none. */
    public static Optional<Setting> byId(String id) {
        for (Setting setting : values()) {
            if (setting.id().equals(id)) {
                return Optional.of(setting);
            }
        }
        return Optional.empty();
    }
}
