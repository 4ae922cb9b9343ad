package midplate.wire;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.notebook.Entered;
import midplate.notebook.PhotoName;
import midplate.notebook.PlatePhoto;
import midplate.notebook.PlatePhoto.Light;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.Lining;
import midplate.notebook.StudyPlate.RunConditions;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.words.Message;

/** Reads the plates of a study, as they were entered: whether they make sense is said elsewhere. */
final class StudyPlateReader {
    static final List<String> REQUIRED = List.of(
            "id",
            "heightMm",
            "widthMm",
            "startMm",
            "frontMm",
            "weak",
            "strong",
            "eluent",
            "additive",
            "lanes",
            "notSeen");
    static final List<String> OPTIONAL = List.of("percentStrong", "conditions", "photo");
    static final List<String> LANE = List.of("id", "readings");
    static final List<String> READING = List.of("id", "spots");
    static final List<String> READING_OPTIONAL = List.of("centreMm", "rf", "sizeMm", "errorMm", "shape", "seen");
    static final List<String> PHOTO = List.of("sha256", "light");
    static final List<String> CONDITIONS =
            List.of("lot", "humidity", "lined", "minutesEquilibrated", "temperatureC", "eluentAge");

    private final StudyJars jars;
    private final StudySpotReader spots;
    private final FaultList faults;
    private final Set<String> plates = new HashSet<>();
    private final Set<String> lanes = new HashSet<>();
    private final Set<String> readings = new HashSet<>();

    StudyPlateReader(StudyJars jars, StudySpotReader spots, FaultList faults) {
        this.jars = jars;
        this.spots = spots;
        this.faults = faults;
    }

    /** One plate. */
    Optional<StudyPlate> read(String path, Json value) {
        return StudyFields.of(path, value, faults, REQUIRED, OPTIONAL)
                .map(fields -> new StudyPlate(
                        fields.freshId("id", plates),
                        fields.entered("heightMm"),
                        fields.entered("widthMm"),
                        fields.entered("startMm"),
                        fields.entered("frontMm"),
                        jars.solvent(fields, "weak"),
                        jars.solvent(fields, "strong"),
                        fields.line("eluent"),
                        fields.typedPercent("percentStrong"),
                        jars.additive(fields),
                        fields.any("conditions")
                                .flatMap(conditions -> conditions(fields.path("conditions"), conditions)),
                        fields.each("lanes", StudyFields.MOST, this::lane),
                        spots.refer(fields, "notSeen"),
                        fields.any("photo").flatMap(photo -> photo(fields.path("photo"), photo))));
    }

    private Optional<Lane> lane(String path, Json value) {
        return StudyFields.of(path, value, faults, LANE, List.of())
                .map(fields -> new Lane(
                        fields.freshId("id", lanes), fields.each("readings", StudyFields.MOST, this::reading)));
    }

    private Optional<SpotSeen> reading(String path, Json value) {
        return StudyFields.of(path, value, faults, READING, READING_OPTIONAL).map(fields -> {
            Given given = given(fields, faults);
            Entered place = fields.entered(given == Given.RF ? "rf" : "centreMm");
            return new SpotSeen(
                    fields.freshId("id", readings),
                    spots.refer(fields, "spots"),
                    given,
                    place,
                    fields.enteredIfAny("sizeMm"),
                    fields.enteredIfAny("errorMm"),
                    fields.lineIfAny("shape"),
                    fields.lineIfAny("seen"));
        });
    }

    /** How the place of a spot was given; that it was given twice or not at all is told. */
    static Given given(StudyFields fields, FaultList faults) {
        boolean rf = fields.has("rf");
        if (rf == fields.has("centreMm")) {
            Message reason =
                    rf ? Message.of("fault.two-places") : Message.of("fault.missing-field", "name", "centreMm");
            faults.add(
                    fields.path(rf ? "rf" : "centreMm"),
                    reason,
                    Message.of(rf ? "came.centre-and-rf" : "came.nothing"),
                    Message.of("allowed.centre-or-rf"),
                    Message.of(rf ? "todo.keep-one-place" : "todo.add-field"));
        }
        return rf ? Given.RF : Given.CENTRE_MM;
    }

    private Optional<PlatePhoto> photo(String path, Json value) {
        return StudyFields.of(path, value, faults, PHOTO, List.of()).flatMap(fields -> {
            Optional<PhotoName> name = PhotoName.in(fields.line("sha256"));
            if (name.isEmpty() && fields.has("sha256")) {
                fields.fault(
                        "sha256",
                        Message.of("fault.no-photo-name"),
                        Message.of("allowed.photo-name"),
                        Message.of("todo.give-photo-name"));
            }
            Light light = Light.byId(fields.choice("light", Light.ids())).orElse(Light.DAYLIGHT);
            return name.map(each -> new PlatePhoto(each, light));
        });
    }

    private Optional<RunConditions> conditions(String path, Json value) {
        return StudyFields.of(path, value, faults, List.of(), CONDITIONS)
                .map(fields -> new RunConditions(
                        fields.lineIfAny("lot"),
                        fields.enteredIfAny("humidity"),
                        fields.truth("lined", Lining.LINED, Lining.UNLINED),
                        fields.enteredIfAny("minutesEquilibrated"),
                        fields.enteredIfAny("temperatureC"),
                        fields.lineIfAny("eluentAge")));
    }
}
