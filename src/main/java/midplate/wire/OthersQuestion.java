package midplate.wire;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.OtherRank;
import midplate.advice.OthersWish;
import midplate.catalogue.SolventCatalogue;
import midplate.plate.Setting;

/**
 * A question about other eluents: a question about the next plate, the mixture to be replaced, and by what the others are put in order.
 *
 * @param asked the question about the next plate
 * @param wish the mixture and the order
 */
record OthersQuestion(Asked asked, OthersWish wish) {
    static final String PERCENT = "percentStrong";
    static final String RANK = "rank";

    private static final List<String> RANKS =
            Arrays.stream(OtherRank.values()).map(OtherRank::id).toList();

    /**
     * Reads it.
     *
     * @throws BadInput with all faults
     */
    static OthersQuestion read(
            Json value, SolventCatalogue catalogue, Compounds compounds, Setting ifUnsaid, FaultList faults) {
        OthersWish wish = OthersWish.USUAL;
        Json rest = value;
        if (value instanceof Json.Fields fields) {
            Map<String, Json> members = new LinkedHashMap<>(fields.members());
            Map<String, Json> own = new LinkedHashMap<>();
            for (String name : List.of(PERCENT, RANK)) {
                Json came = members.remove(name);
                if (came != null) {
                    own.put(name, came);
                }
            }
            rest = new Json.Fields(members);
            wish = JsonFields.open("", new Json.Fields(own), faults)
                    .map(OthersQuestion::wish)
                    .orElse(wish);
        }
        return new OthersQuestion(
                new QuestionReader(catalogue, compounds, ifUnsaid, faults, QuestionReader.PairAsked.ANYWHERE)
                        .read(rest),
                wish);
    }

    private static OthersWish wish(JsonFields own) {
        OptionalDouble percent = own.percent(PERCENT);
        Optional<OtherRank> rank = own.choice(RANK, RANKS)
                .flatMap(word -> Arrays.stream(OtherRank.values())
                        .filter(each -> each.id().equals(word))
                        .findFirst());
        return new OthersWish(percent, rank);
    }
}
