package midplate.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.words.Refusal;
import midplate.words.Texts;

/** The one form of an error, at every door: {@code {"errors": [{field, code, came, allowed, todo, message}]}}. */
public final class ErrorBody {
    private ErrorBody() {}

    /** The body that tells faults. */
    public static String of(List<Fault> faults) {
        ObjectNode body = JsonWriting.object();
        body.set("errors", JsonWriting.faults(faults));
        return JsonWriting.text(body);
    }

    /** The body that tells what a door itself refuses. */
    public static String of(Texts texts, Refusal refusal) {
        FaultList faults = new FaultList(texts);
        faults.add(refusal.field(), refusal);
        return of(faults.faults());
    }

    /** The line of a batch whose request could not be taken. */
    static String line(Json id, List<Fault> faults) {
        ObjectNode body = JsonWriting.object();
        body.set("id", JsonWriting.id(id));
        Fault first = faults.get(0);
        body.putObject("error").put("field", first.field()).put("message", first.message());
        body.set("errors", JsonWriting.faults(faults));
        return JsonWriting.text(body);
    }
}
