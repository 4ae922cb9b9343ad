package midplate.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Builds the JSON of a request from what a door was told, so that every door asks in the same words. */
public final class RequestText {
    private final ObjectNode request = JsonWriting.object();

    private RequestText() {}

    /** A request without a field. */
    public static RequestText empty() {
        return new RequestText();
    }

    /** With a text. */
    public RequestText with(String field, String value) {
        request.put(field, value);
        return this;
    }

    /** With a number. */
    public RequestText with(String field, double value) {
        request.set(field, JsonWriting.exact(value));
        return this;
    }

    /** With a list of two numbers. */
    public RequestText with(String field, double first, double second) {
        request.putArray(field).add(first).add(second);
        return this;
    }

    /** With another request's fields as one object. */
    public RequestText with(String field, RequestText part) {
        request.set(field, part.request);
        return this;
    }

    /** With one spot more to ask about. */
    public RequestText withSpot(String name) {
        list("spots").addObject().put("name", name);
        return this;
    }

    /** With one spot more to ask about, and what it is: a SMILES, or a class. */
    public RequestText withSpot(String name, Map<String, String> known) {
        ObjectNode spot = list("spots").addObject().put("name", name);
        known.forEach(spot::put);
        return this;
    }

    /** With the groups of the last spot, each with its number. */
    public RequestText withSpotGroups(Map<String, Double> counts) {
        ArrayNode spots = list("spots");
        ObjectNode groups = ((ObjectNode) spots.get(spots.size() - 1)).putObject("groups");
        counts.forEach((group, count) -> groups.set(group, JsonWriting.exact(count)));
        return this;
    }

    /** With one measured spot more: its middle and, where it is above 0, its size [mm]. */
    public RequestText withMeasuredSpot(String name, double centreMm, double sizeMm) {
        ObjectNode spot = list("spots").addObject().put("spot", name);
        spot.set("centreMm", JsonWriting.exact(centreMm));
        if (sizeMm > 0) {
            spot.set("sizeMm", JsonWriting.exact(sizeMm));
        }
        return this;
    }

    /** With one run more in the pair asked for: percentage [% v/v] and Rf by spot. */
    public RequestText withRun(double percentStrong, Map<String, Double> rf) {
        ObjectNode run = list("runs").addObject();
        run.set("percentStrong", JsonWriting.exact(percentStrong));
        ObjectNode readings = run.putObject("rf");
        rf.forEach((spot, value) -> readings.set(spot, JsonWriting.exact(value)));
        return this;
    }

    /** With another field in the last run. */
    public RequestText withRunField(String field, String value) {
        ArrayNode runs = list("runs");
        ((ObjectNode) runs.get(runs.size() - 1)).put(field, value);
        return this;
    }

    /** With one eluent more to be poured on a column: percentage [% v/v] and volume [ml]. */
    public RequestText withStep(double percentStrong, double volumeMl) {
        ObjectNode step = list("steps").addObject();
        step.set("percentStrong", JsonWriting.exact(percentStrong));
        step.set("volumeMl", JsonWriting.exact(volumeMl));
        return this;
    }

    /** The same with its spots under another name, as where compounds are asked about that need be no spots. */
    public RequestText withSpotsAs(String field) {
        JsonNode spots = request.remove("spots");
        if (spots != null) {
            request.set(field, spots);
        }
        return this;
    }

    private ArrayNode list(String field) {
        return request.has(field) ? (ArrayNode) request.get(field) : request.putArray(field);
    }

    /** The JSON. */
    @Override
    public String toString() {
        return JsonWriting.text(request);
    }
}
