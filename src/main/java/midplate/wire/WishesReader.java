package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.advice.ApartNames;
import midplate.advice.NextPlate;
import midplate.advice.Shelf;
import midplate.advice.Wishes;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Refusal;

/** Reads what is wished beyond a window: the shelf, pairs to be kept apart, the next jar and plate. */
final class WishesReader {
    static final List<String> NEXT_PLATE_FIELDS = List.of("jarDiameterMm", "plate");
    static final List<String> LINES_FIELDS = List.of("heightMm", "startMm", "frontMm");

    static final int MOST_SOLVENTS = 50;
    static final int MOST_PAIRS = 10;

    private static final int LONGEST_SOLVENT = 100;

    private final SolventCatalogue catalogue;
    private final FaultList faults;

    WishesReader(SolventCatalogue catalogue, FaultList faults) {
        this.catalogue = catalogue;
        this.faults = faults;
    }

    /**
     * The wishes; what is faulty reads as not wished.
     *
     * @param pair the two solvents asked for, where they are an eluent and must stand on the shelf
     * @param spots names of the spots asked about
     */
    Wishes read(JsonFields fields, Optional<PairReader.Pair> pair, Set<String> spots) {
        return new Wishes(shelf(fields, pair), apart(fields, spots), nextPlate(fields));
    }

    /** The solvents at hand; those of the pair, where one is given, must be among them. */
    Shelf shelf(JsonFields fields, Optional<PairReader.Pair> pair) {
        Optional<List<Json>> items = fields.items("shelf", MOST_SOLVENTS);
        if (items.isEmpty()) {
            return Shelf.UNTOLD;
        }
        if (items.get().isEmpty()) {
            faults.add(
                    fields.path("shelf"),
                    Message.of("fault.empty-shelf"),
                    "[]",
                    Message.of("allowed.solvents", "interval", Allowed.closed(1, MOST_SOLVENTS)),
                    Message.of("todo.name-shelf"));
            return Shelf.UNTOLD;
        }
        int before = faults.count();
        List<Solvent> solvents = new ArrayList<>();
        for (int i = 0; i < items.get().size(); i++) {
            solvent(fields.path("shelf[" + i + "]"), items.get().get(i)).ifPresent(solvents::add);
        }
        if (faults.count() > before) {
            return Shelf.UNTOLD;
        }
        Shelf shelf = new Shelf(solvents);
        pair.ifPresent(asked -> {
            shelf.lacks(fields.path("weak"), asked.weak()).ifPresent(this::refuse);
            shelf.lacks(fields.path("strong"), asked.strong()).ifPresent(this::refuse);
        });
        return shelf;
    }

    private Optional<Solvent> solvent(String path, Json value) {
        return JsonFields.text(path, value, LONGEST_SOLVENT, faults).flatMap(name -> {
            try {
                return Optional.of(catalogue.solventIn(path, name));
            } catch (Refusal refusal) {
                refuse(refusal);
                return Optional.empty();
            }
        });
    }

    private void refuse(Refusal refusal) {
        faults.add(refusal.field(), refusal);
    }

    private List<ApartNames> apart(JsonFields fields, Set<String> spots) {
        List<ApartNames> pairs = new ArrayList<>();
        fields.items("apart", MOST_PAIRS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                pair(fields.path("apart[" + i + "]"), list.get(i), spots)
                        .filter(pair -> pairs.stream().noneMatch(pair::isSameAs))
                        .ifPresent(pairs::add);
            }
        });
        return pairs;
    }

    private Optional<ApartNames> pair(String path, Json value, Set<String> spots) {
        if (!(value instanceof Json.Items items) || items.items().size() != 2) {
            JsonFields.wrongType(path, value, Message.of("kind.two-spots"), faults);
            return Optional.empty();
        }
        Optional<String> one = spot(path + "[0]", items.items().get(0), spots);
        Optional<String> other = spot(path + "[1]", items.items().get(1), spots);
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        if (one.equals(other)) {
            faults.add(
                    path,
                    Message.of("fault.apart-from-itself", "spot", one.get()),
                    value.shown(),
                    Message.of("allowed.two-spots"),
                    Message.of("todo.name-two-spots"));
            return Optional.empty();
        }
        return Optional.of(new ApartNames(one.get(), other.get()));
    }

    private Optional<String> spot(String path, Json value, Set<String> spots) {
        return JsonFields.text(path, value, QuestionReader.LONGEST_NAME, faults).filter(name -> {
            if (spots.isEmpty() || spots.contains(name)) { // no spots: told already
                return true;
            }
            faults.add(
                    path,
                    Message.of("fault.unknown-spot", "spot", value.shown()),
                    value.shown(),
                    Allowed.words(spots),
                    Nearest.to(name, spots)
                            .map(near -> Message.of("todo.did-you-mean", "name", near))
                            .orElse(Message.of("todo.add-or-leave-pair-out")));
            return false;
        });
    }

    private NextPlate nextPlate(JsonFields fields) {
        NextPlate usual = NextPlate.USUAL;
        Optional<JsonFields> next =
                fields.any("nextPlate").flatMap(value -> object(fields.path("nextPlate"), value, NEXT_PLATE_FIELDS));
        if (next.isEmpty()) {
            return usual;
        }
        int before = faults.count();
        OptionalDouble jar = next.get().number("jarDiameterMm");
        Optional<JsonFields> lines =
                next.get().any("plate").flatMap(value -> object(next.get().path("plate"), value, LINES_FIELDS));
        double height = length(lines, "heightMm", usual.heightMm());
        double start = length(lines, "startMm", usual.startMm());
        double front = length(lines, "frontMm", usual.frontMm());
        if (faults.count() > before) {
            return usual;
        }
        double diameter = jar.orElse(usual.jarDiameterMm());
        List<Refusal> wrong = NextPlate.faults(diameter, height, start, front);
        wrong.forEach(this::refuse);
        return wrong.isEmpty() ? new NextPlate(diameter, height, start, front) : usual;
    }

    private Optional<JsonFields> object(String path, Json value, List<String> known) {
        return JsonFields.of(path, value, faults, known);
    }

    private static double length(Optional<JsonFields> lines, String name, double usual) {
        return lines.map(fields -> fields.number(name))
                .orElse(OptionalDouble.empty())
                .orElse(usual);
    }
}
