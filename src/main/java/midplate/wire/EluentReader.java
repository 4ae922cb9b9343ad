package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.identity.PlateEluent;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads what plates ran in: the object {@value #ELUENT} of a request, which may be left out. */
final class EluentReader {
    static final String ELUENT = "eluent";
    static final List<String> FIELDS =
            List.of("sorbent", "weak", "strong", "percentStrong", "additive", "setting", "shelf");

    private final PairReader pairs;
    private final WishesReader wishes;
    private final Setting ifUnsaid;
    private final FaultList faults;

    /**
     * For one request.
     *
     * @param ifUnsaid how much plates scatter where the eluent does not say it
     */
    EluentReader(SolventCatalogue catalogue, Setting ifUnsaid, FaultList faults) {
        this.pairs = new PairReader(catalogue, faults);
        this.wishes = new WishesReader(catalogue, faults);
        this.ifUnsaid = ifUnsaid;
        this.faults = faults;
    }

    /** The eluent of a request; empty where it was left out or is faulty. */
    Optional<PlateEluent> read(JsonFields request) {
        return request.any(ELUENT)
                .flatMap(value -> JsonFields.of(request.path(ELUENT), value, faults, FIELDS))
                .flatMap(this::eluent);
    }

    private Optional<PlateEluent> eluent(JsonFields fields) {
        int before = faults.count();
        Sorbent sorbent = fields.choice("sorbent", QuestionReader.SORBENTS)
                .flatMap(Sorbent::byId)
                .orElse(Sorbent.SILICA);
        Setting setting = fields.choice("setting", QuestionReader.SETTINGS)
                .flatMap(Setting::byId)
                .orElse(ifUnsaid);
        Optional<PairReader.Pair> pair = pairs.read(fields, sorbent);
        if (!fields.has("percentStrong")) {
            fields.missing("percentStrong", Allowed.closed(0, 100), Message.of("todo.give-percent-of-plate"));
        }
        OptionalDouble percent = fields.percent("percentStrong");
        Optional<String> additive = fields.text("additive", QuestionReader.LONGEST_NAME);
        // the plates ran already, so their solvents need not stand on the shelf
        List<Solvent> shelf = wishes.shelf(fields, Optional.empty()).solvents();
        return pair.isEmpty() || percent.isEmpty() || faults.count() > before
                ? Optional.empty()
                : Optional.of(new PlateEluent(
                        sorbent,
                        pair.get().weak(),
                        pair.get().strong(),
                        percent.getAsDouble(),
                        additive,
                        setting,
                        shelf));
    }
}
