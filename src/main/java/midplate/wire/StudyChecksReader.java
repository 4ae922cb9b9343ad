package midplate.wire;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import midplate.notebook.CheckEluent;
import midplate.notebook.Entered;
import midplate.notebook.StudyChecks;
import midplate.notebook.StudyHrf;
import midplate.notebook.StudyPurity;
import midplate.notebook.StudySpot;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads the checks of a study, as they were entered: whether they make sense is said elsewhere. */
final class StudyChecksReader {
    static final int MOST_STANDARDS = 50;
    static final int MOST_SPOTS = 50;

    static final List<String> CHECKS = List.of("identity", "purity", "hrf", "reaction");
    static final List<String> PURITY =
            List.of("rf", "spotsSeen", "seenBy", "volumeUl", "concentrationPercent", "touches");
    static final List<String> PURITY_OPTIONAL = List.of("spot", "startSpot");
    static final List<String> HRF = List.of("system", "measured", "spots");
    static final List<String> HRF_SPOT = List.of("id", "name", "hrf");
    static final List<String> COMPOUND = List.of("id", "name");
    static final List<String> SAID = List.of("by", "smiles", "groups", "class");
    static final List<String> ELUENT = List.of("weak", "strong", "eluent", "additive");

    private static final List<String> STARTS =
            Stream.of(StudyPurity.AtStart.values()).map(StudyPurity.AtStart::id).toList();

    private final StudyJars jars;
    private final StudySpotReader spots;
    private final FaultList faults;

    StudyChecksReader(StudyJars jars, StudySpotReader spots, FaultList faults) {
        this.jars = jars;
        this.spots = spots;
        this.faults = faults;
    }

    /** These fields and those. */
    static List<String> with(List<String> some, String... more) {
        return Stream.concat(some.stream(), Stream.of(more)).toList();
    }

    /** The checks. */
    Optional<StudyChecks> read(String path, Json value) {
        return StudyFields.of(path, value, faults, List.of(), CHECKS)
                .map(fields -> new StudyChecks(
                        fields.any("identity")
                                .flatMap(came ->
                                        new StudyComparisonReader(this, faults).read(fields.path("identity"), came)),
                        fields.any("purity").flatMap(came -> purity(fields.path("purity"), came)),
                        fields.any("hrf").flatMap(came -> hrf(fields.path("hrf"), came)),
                        fields.any("reaction")
                                .flatMap(came ->
                                        new StudyReactionReader(this, faults).read(fields.path("reaction"), came))));
    }

    /** A compound with an id of its own. */
    StudySpot compound(StudyFields fields, StudyIds ids) {
        return new StudySpot(ids.fresh(fields), fields.line("name"), spots.what(fields));
    }

    /** The id of a compound of the study, where one is named. */
    Optional<String> spot(StudyFields fields) {
        return spots.referToOne(fields, "spot");
    }

    /** What plates ran in. */
    CheckEluent eluent(StudyFields fields) {
        return new CheckEluent(
                jars.solvent(fields, "weak"),
                jars.solvent(fields, "strong"),
                fields.line("eluent"),
                fields.typedPercent("percentStrong"),
                jars.additive(fields));
    }

    private Optional<StudyPurity> purity(String path, Json value) {
        return StudyFields.of(path, value, faults, PURITY, PURITY_OPTIONAL)
                .map(fields -> new StudyPurity(
                        spot(fields),
                        fields.entered("rf"),
                        fields.entered("spotsSeen"),
                        fields.ids("seenBy"),
                        fields.entered("volumeUl"),
                        fields.entered("concentrationPercent"),
                        fields.entered("touches"),
                        fields.any("startSpot").map(came -> atStart(fields))));
    }

    private static StudyPurity.AtStart atStart(StudyFields fields) {
        return StudyPurity.AtStart.values()[STARTS.indexOf(fields.choice("startSpot", STARTS))];
    }

    private Optional<StudyHrf> hrf(String path, Json value) {
        return StudyFields.of(path, value, faults, HRF, List.of()).map(fields -> {
            Set<String> taken = new HashSet<>();
            return new StudyHrf(
                    fields.line("system"),
                    measured(fields),
                    fields.each(
                            "spots",
                            MOST_SPOTS,
                            (place, spot) -> StudyFields.of(place, spot, faults, HRF_SPOT, List.of())
                                    .map(each -> new StudyHrf.Spot(
                                            each.freshId("id", taken), each.line("name"), each.entered("hrf")))));
        });
    }

    private Map<String, Entered> measured(StudyFields fields) {
        Map<String, Entered> measured = new LinkedHashMap<>();
        fields.any("measured")
                .flatMap(value -> JsonFields.open(fields.path("measured"), value, faults))
                .ifPresent(object -> {
                    if (object.size() > MOST_STANDARDS) {
                        tooMany(fields, object.size());
                        return;
                    }
                    for (String name : object.names()) {
                        StudyText.line(object.place(), new Json.Text(name), StudyFields.LONGEST_LINE, faults)
                                .ifPresent(plain -> measured.put(
                                        plain,
                                        StudyNumber.entered(
                                                object.path(name),
                                                object.any(name).orElseThrow(),
                                                faults)));
                    }
                });
        return measured;
    }

    private void tooMany(StudyFields fields, int came) {
        faults.add(
                fields.path("measured"),
                Message.of("fault.too-many", "name", "measured", "most", MOST_STANDARDS),
                Message.of("came.entries", "count", came),
                Message.of("allowed.entries", "interval", Allowed.closed(0, MOST_STANDARDS)),
                Message.of("todo.leave-some-out"));
    }
}
