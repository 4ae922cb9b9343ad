package midplate.terminal;

import java.util.ArrayList;
import java.util.List;

/** Reads one option after the other, so that all that cannot be read are told at once and not one a time. */
final class Attempts {
    private final List<Nonsense> failed = new ArrayList<>();

    /** Reads something of the command line, or keeps what is wrong with it. */
    void at(Runnable reading) {
        try {
            reading.run();
        } catch (Nonsense nonsense) {
            failed.addAll(nonsense.each());
        }
    }

    /**
     * To be asked when all was read.
     *
     * @throws Nonsense with all that could not be read
     */
    void orTellAll() {
        if (!failed.isEmpty()) {
            throw Nonsense.all(failed);
        }
    }
}
