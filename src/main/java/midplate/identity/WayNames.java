package midplate.identity;

import java.util.List;
import midplate.catalogue.WayOfSeeing;
import midplate.words.Allowed;
import midplate.words.Message;

/** Names put one after the other. */
final class WayNames {
    private WayNames() {}

    /** All of these ways. */
    static Message listed(List<WayOfSeeing> ways) {
        return Allowed.list(ways.stream().map(WayOfSeeing::said).toList());
    }

    /** One of these ways. */
    static Message either(List<WayOfSeeing> ways) {
        return Allowed.either(ways.stream().map(WayOfSeeing::said).toList());
    }

    /** Names that somebody gave. */
    static Message given(List<String> names) {
        return Allowed.words(names);
    }
}
