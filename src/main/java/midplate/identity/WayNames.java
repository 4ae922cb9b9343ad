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

    /** A group as a way answers to it: the ring, where the table counts its carbons. */
    static Message group(String id) {
        return id.equals("aromatic-carbon") ? Message.of("seeing.aromatic-ring") : Message.of("group." + id);
    }

    /** Names that somebody gave. */
    static Message given(List<String> names) {
        return Allowed.words(names);
    }
}
