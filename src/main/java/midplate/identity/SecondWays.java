package midplate.identity;

import java.util.List;
import midplate.words.Message;

/** Ways beside another eluent of telling two compounds apart; common practice, no source. */
final class SecondWays {
    static final List<Message> ALL = List.of(
            Message.of("same.way-stain"),
            Message.of("same.way-iodine"),
            Message.of("same.way-phase"),
            Message.of("same.way-melting"),
            Message.of("same.way-spectra"));

    private SecondWays() {}
}
