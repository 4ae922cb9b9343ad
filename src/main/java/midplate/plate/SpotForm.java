package midplate.plate;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a spot looks like along its lane, as somebody saw it or a picture shows it. */
public enum SpotForm {
    /** With an edge all round. */
    COMPACT,
    /** Drawn out along the run. */
    STREAK,
    /** With a steep upper edge and a tail drawn out below it, as a spot looks of which too much was put on. */
    SHARP_HEAD,
    /** Two that have run together, so that their centres cannot be told apart well. */
    MERGED;

    /** The word in requests and studies: {@code compact}, {@code streak}, {@code sharp-head}, {@code merged}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All words, in the order of the forms. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(SpotForm::id).toList();
    }

    /** The form of that word, written exactly so; empty for any other word. */
    public static Optional<SpotForm> byId(String id) {
        return Arrays.stream(values()).filter(form -> form.id().equals(id)).findFirst();
    }
}
