package midplate.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import midplate.words.Message;

/** Puts a question together, with the usual answers where a test says nothing; all readings are invented. */
final class Asking {
    static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    static final Adviser ADVISER = Adviser.builtIn(CATALOGUE);

    private Sorbent sorbent = Sorbent.SILICA;
    private final Solvent weak;
    private final Solvent strong;
    private Optional<String> additive = Optional.empty();
    private List<String> spots = List.of("A");
    private final List<Run> runs = new ArrayList<>();
    private Window window = Window.USUAL;
    private Setting setting = Setting.AUTOMATED;
    private Glassware glassware = Glassware.USUAL;
    private Shelf shelf = Shelf.UNTOLD;
    private final List<ApartNames> apart = new ArrayList<>();
    private NextPlate nextPlate = NextPlate.USUAL;

    private Asking(String weak, String strong) {
        this.weak = CATALOGUE.solvent(weak);
        this.strong = CATALOGUE.solvent(strong);
    }

    static Asking acetate() {
        return new Asking("hexane", "ethyl acetate");
    }

    static Asking about(String weak, String strong) {
        return new Asking(weak, strong);
    }

    Asking on(Sorbent layer) {
        this.sorbent = layer;
        return this;
    }

    Asking with(String something) {
        this.additive = Optional.of(something);
        return this;
    }

    Asking spots(String... names) {
        this.spots = List.of(names);
        return this;
    }

    Asking window(double low, double high) {
        this.window = new Window(low, high);
        return this;
    }

    Asking in(Setting where) {
        this.setting = where;
        return this;
    }

    Asking poured(double amountMl, double graduationMl) {
        this.glassware = new Glassware(amountMl, graduationMl);
        return this;
    }

    Asking shelf(String... names) {
        this.shelf = new Shelf(Stream.of(names).map(CATALOGUE::solvent).toList());
        return this;
    }

    Asking apart(String one, String other) {
        this.apart.add(new ApartNames(one, other));
        return this;
    }

    Asking next(NextPlate plate) {
        this.nextPlate = plate;
        return this;
    }

    /** A plate in the pair asked about. */
    Asking run(double percent, Map<String, Double> rf) {
        return run(new Eluent(sorbent, weak, strong, percent, Optional.empty()), rf);
    }

    Asking run(Eluent eluent, Map<String, Double> rf) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        rf.forEach((spot, each) -> readings.put(spot, Reading.of(each)));
        return plate(eluent, readings);
    }

    Asking read(double percent, String spot, Reading reading) {
        return plate(new Eluent(sorbent, weak, strong, percent, Optional.empty()), Map.of(spot, reading));
    }

    /** A plate in the pair asked about with spots of one lane that nobody named. */
    Asking unlabelled(double percent, Set<String> notSeen, double... rf) {
        List<UnlabelledSpot> seen = IntStream.range(0, rf.length)
                .mapToObj(i -> new UnlabelledSpot(i, Reading.of(rf[i])))
                .toList();
        runs.add(new Run(
                new Eluent(sorbent, weak, strong, percent, Optional.empty()),
                Map.of(),
                List.of(new UnlabelledLane(1, Set.of(), seen)),
                notSeen));
        return this;
    }

    private Asking plate(Eluent eluent, Map<String, Reading> readings) {
        runs.add(new Run(eluent, readings));
        return this;
    }

    static Eluent silica(String weak, String strong, double percent) {
        return Eluent.of(Sorbent.SILICA, CATALOGUE.solvent(weak), CATALOGUE.solvent(strong), percent);
    }

    Question question() {
        return new Question(sorbent, weak, strong, additive, spots, runs, window, setting, glassware)
                .wishing(new Wishes(shelf, apart, nextPlate));
    }

    Advice advice() {
        return ADVISER.advise(question());
    }

    Forecast forecast(double percent) {
        return ADVISER.predict(question(), List.of(percent)).get(0);
    }

    List<Forecast> forecasts(List<Double> percents) {
        return ADVISER.predict(question(), percents);
    }

    /** 0 to 100 by a half. */
    static List<Double> halves() {
        return IntStream.rangeClosed(0, 200).mapToObj(i -> i / 2.0).toList();
    }

    /** The codes of messages, in order. */
    static List<String> codes(List<Message> messages) {
        return messages.stream().map(Message::code).toList();
    }

    static Message find(List<Message> messages, String code) {
        return messages.stream()
                .filter(message -> message.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + code + " in " + messages));
    }
}
