package midplate.wire;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.column.Loading;
import midplate.notebook.CheckEluent;
import midplate.notebook.ColumnFlask;
import midplate.notebook.ColumnRun;
import midplate.notebook.ColumnStep;
import midplate.notebook.ColumnTube;
import midplate.notebook.Entered;
import midplate.notebook.GivenAdvice;
import midplate.notebook.JarAdditive;
import midplate.notebook.NextJar;
import midplate.notebook.PhotoName;
import midplate.notebook.PlatePhoto;
import midplate.notebook.Study;
import midplate.notebook.StudyBed;
import midplate.notebook.StudyColumn;
import midplate.notebook.StudyId;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudySpot;
import midplate.notebook.TubeMark;

/** Invented studies that hold everything a study can hold, with texts that nobody would choose; the same seed gives the same ones. */
public final class RandomStudies {
    static final List<String> ODD = List.of(
            "",
            " ",
            "a trailing blank ",
            "\"quoted\" and 'so'",
            "back\\slash",
            "</script><script>alert(1)</script>",
            "\u202eright to left\u202c",
            "\u05d0\u05d1\u05d2",
            "\ud83e\uddea\ud83d\udc69\u200d\ud83d\udd2c",
            "e\u0301 and \u00e9",
            "\u2028line\u2029separators",
            "../../etc/passwd",
            "%2e%2e%2f",
            "=1+1",
            "null",
            "12",
            "0,35",
            "1x",
            "\ufeffmark",
            "\uffff",
            "x".repeat(300));
    private static final List<String> NUMBERS =
            List.of("0", "-0", "7", "13.5", "13.50", "0.1", "1e2", "1E-7", "123456789.123456789", "-4.25", "70");

    private final Random random;
    private final List<String> solvents;
    private final List<String> additives;
    private final List<String> groups = FunctionalGroups.builtIn().ids();

    /** With a seed. */
    public RandomStudies(long seed) {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        this.random = new Random(seed);
        this.solvents = catalogue.solvents().stream().map(each -> each.id()).toList();
        this.additives = StudyJars.additives(catalogue);
    }

    <T> T one(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    <T> Optional<T> perhaps(Supplier<T> some) {
        return random.nextBoolean() ? Optional.of(some.get()) : Optional.empty();
    }

    <T> List<T> some(int most, Supplier<T> each) {
        return IntStream.range(0, random.nextInt(most + 1))
                .mapToObj(i -> each.get())
                .toList();
    }

    <T> List<T> chosen(List<T> from, int most) {
        List<T> mixed = new ArrayList<>(from);
        Collections.shuffle(mixed, random);
        return mixed.subList(0, Math.min(random.nextInt(most + 1), mixed.size()));
    }

    private List<String> pair(List<String> from) {
        List<String> two = chosen(from, 2);
        return two.size() == 2 ? two : List.of();
    }

    Entered entered() {
        if (random.nextInt(4) == 0) {
            return Entered.text(one(ODD));
        }
        String written = one(NUMBERS);
        return Entered.number(written, Double.parseDouble(written));
    }

    private double fraction() {
        return random.nextInt(5) == 0 ? random.nextInt(2) : random.nextDouble();
    }

    private Instant time() {
        return Instant.ofEpochSecond(random.nextInt(Integer.MAX_VALUE), random.nextInt(3) * 120_000_000L);
    }

    private JarAdditive additive() {
        return new JarAdditive(one(additives), one(ODD));
    }

    /** The next study. */
    public Study next() {
        List<StudySpot> spots = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int i = 1; i <= count; i++) {
            spots.add(new StudySpot("s" + i, one(ODD), perhaps(this::identity)));
        }
        List<String> ids = spots.stream().map(StudySpot::id).toList();
        Names names = new Names();
        String title = one(ODD);
        return new Study(
                id(),
                title,
                time(),
                time(),
                one(List.of(Study.Keeping.values())),
                one(List.of(Study.Origin.values())),
                one(List.of("silica", "alumina")),
                one(List.of("automated", "bench", "class")),
                chosen(solvents, 9),
                spots,
                some(4, () -> plate(names, ids)),
                jar(ids),
                some(3, () -> advice(ids)),
                perhaps(() -> column(names, ids)),
                perhaps(() -> new RandomChecks(this, random, names::next).next(ids)),
                notes());
    }

    private StudyId id() {
        String signs = "abcdefghijklmnopqrstuvwxyz23456789";
        StringBuilder id = new StringBuilder("20261126-");
        while (id.length() < 19) {
            id.append(signs.charAt(random.nextInt(signs.length())));
        }
        return new StudyId(id.toString());
    }

    private String notes() {
        return String.join(one(List.of("\n", "\r\n", "\t", "\u0000")), some(5, () -> one(ODD)));
    }

    StudySpot.Identity identity() {
        Map<String, Entered> counts = new LinkedHashMap<>();
        chosen(groups, 4).forEach(group -> counts.put(group, entered()));
        return new StudySpot.Identity(
                one(List.of(StudySpot.By.values())), one(ODD), counts, one(List.of("", "ester", "hydrocarbon")));
    }

    private static final class Names {
        private int given;

        String next(String letter) {
            given++;
            return letter + given;
        }
    }

    private StudyPlate plate(Names names, List<String> spots) {
        double percent = one(List.of(0.0, 10.0, 100.0 / 3, 150.0, 1e-7));
        return new StudyPlate(
                names.next("p"),
                entered(),
                entered(),
                entered(),
                entered(),
                one(solvents),
                one(solvents),
                one(ODD),
                random.nextBoolean() ? OptionalDouble.of(percent) : OptionalDouble.empty(),
                additive(),
                perhaps(() -> new StudyPlate.RunConditions(
                        perhaps(() -> one(ODD)),
                        perhaps(this::entered),
                        perhaps(() -> one(List.of(StudyPlate.Lining.values()))),
                        perhaps(this::entered),
                        perhaps(this::entered),
                        perhaps(() -> one(ODD)))),
                some(3, () -> new StudyPlate.Lane(names.next("l"), some(4, () -> seen(names, spots)))),
                chosen(spots, 2),
                perhaps(this::photo));
    }

    private PlatePhoto photo() {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < 64; i++) {
            name.append(Character.forDigit(random.nextInt(16), 16));
        }
        return new PlatePhoto(new PhotoName(name.toString()), one(List.of(PlatePhoto.Light.values())));
    }

    private StudyPlate.SpotSeen seen(Names names, List<String> spots) {
        return new StudyPlate.SpotSeen(
                names.next("r"),
                chosen(spots, 2),
                one(List.of(StudyPlate.Given.values())),
                entered(),
                perhaps(this::entered),
                perhaps(this::entered),
                perhaps(() -> one(ODD)),
                perhaps(() -> one(ODD)));
    }

    private NextJar jar(List<String> spots) {
        return new NextJar(
                one(solvents),
                one(solvents),
                additive(),
                entered(),
                entered(),
                one(StudyJars.WINDOW_KINDS),
                pair(spots),
                entered(),
                entered());
    }

    private StudyColumn column(Names names, List<String> spots) {
        return new StudyColumn(
                perhaps(() -> one(spots)),
                entered(),
                bed(),
                one(List.of(Loading.values())),
                entered(),
                entered(),
                entered(),
                one(List.of(StudyColumn.Elution.values())),
                some(3, this::step),
                some(3, () -> run(names, spots)));
    }

    private StudyBed bed() {
        return switch (random.nextInt(3)) {
            case 0 ->
                new StudyBed(
                        StudyBed.Kind.ADVISED, perhaps(this::entered), perhaps(this::entered), perhaps(this::entered));
            case 1 ->
                new StudyBed(
                        StudyBed.Kind.CARTRIDGE,
                        Optional.of(entered()),
                        perhaps(this::entered),
                        perhaps(this::entered));
            default ->
                new StudyBed(
                        StudyBed.Kind.GLASS, perhaps(this::entered), Optional.of(entered()), Optional.of(entered()));
        };
    }

    private ColumnStep step() {
        OptionalDouble percent = random.nextBoolean()
                ? OptionalDouble.of(one(List.of(0.0, 12.5, 100.0 / 3, 150.0)))
                : OptionalDouble.empty();
        return new ColumnStep(one(ODD), percent, entered());
    }

    private ColumnRun run(Names names, List<String> spots) {
        return new ColumnRun(
                names.next("c"),
                one(solvents),
                one(solvents),
                additive(),
                bed(),
                some(3, this::step),
                one(List.of(Loading.values())),
                entered(),
                entered(),
                entered(),
                some(6, () -> new ColumnTube(names.next("t"), perhaps(() -> marks(spots)))),
                some(3, () -> new ColumnFlask(names.next("f"), entered(), entered(), entered(), entered())));
    }

    private List<TubeMark> marks(List<String> spots) {
        return chosen(spots, 3).stream()
                .map(spot -> new TubeMark(spot, random.nextInt(TubeMark.STRONGEST + 1)))
                .toList();
    }

    CheckEluent eluent() {
        OptionalDouble percent = random.nextBoolean()
                ? OptionalDouble.of(one(List.of(0.0, 12.5, 100.0 / 3, 150.0)))
                : OptionalDouble.empty();
        return new CheckEluent(one(solvents), one(solvents), one(ODD), percent, additive());
    }

    private GivenAdvice advice(List<String> spots) {
        List<GivenAdvice.Foretold> foretold = new ArrayList<>();
        for (String spot : chosen(spots, 5)) {
            double[] rf = {fraction(), fraction(), fraction()};
            java.util.Arrays.sort(rf);
            foretold.add(new GivenAdvice.Foretold(spot, rf[1], rf[0], rf[2]));
        }
        return new GivenAdvice(
                time(),
                one(List.of("0.1.0", "")),
                chosen(List.of("p1", "p2", "gone"), 3),
                one(solvents),
                one(solvents),
                100 * fraction(),
                one(ODD),
                fraction(),
                fraction(),
                pair(spots),
                foretold,
                fraction(),
                one(StudyAdviceReader.BASES));
    }
}
