package midplate.photo;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A spot that the reader proposes.
 *
 * @param xMm from the left edge [mm]
 * @param mm its centre, from the lower edge [mm]
 * @param rf its Rf
 * @param errorMm standard error of the centre [mm]
 * @param shape as what it is told
 * @param contrast 0…1
 * @param sizeMm length along the lane [mm]
 */
record Proposed(double xMm, double mm, double rf, double errorMm, String shape, double contrast, double sizeMm) {
    static Proposed of(JsonNode spot) {
        return new Proposed(
                spot.get("xMm").asDouble(Double.NaN),
                spot.get("mm").asDouble(Double.NaN),
                spot.get("rf").asDouble(Double.NaN),
                spot.get("errorMm").asDouble(Double.NaN),
                spot.get("shape").asText(),
                spot.get("contrast").asDouble(Double.NaN),
                spot.get("sizeMm").asDouble(Double.NaN));
    }
}
