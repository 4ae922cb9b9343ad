package midplate.wire;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.notebook.NextJar;
import midplate.notebook.Study;
import midplate.notebook.Study.Keeping;
import midplate.notebook.Study.Origin;
import midplate.notebook.StudyChecks;
import midplate.notebook.StudyColumn;
import midplate.notebook.StudyId;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudySpot;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Reads a study of any version that is known; older ones are upgraded first. All faults are told at once, with their places in a study
 * of the newest version. Everything that can be entered on the page can be read, also where it makes no sense yet.
 */
final class StudyReader {
    static final List<String> REQUIRED = List.of(
            "format",
            "version",
            "id",
            "title",
            "created",
            "modified",
            "archived",
            "origin",
            "sorbent",
            "setting",
            "shelf",
            "spots",
            "plates",
            "next",
            "advices",
            "notes");
    /** Whoever writes a file puts the digest in and looks at it; here it only has its form. */
    static final List<String> OPTIONAL = List.of("sha256", "column", "checks");

    static final int LONGEST_TITLE = 300;
    static final int LONGEST_NOTES = 100_000;

    static final List<String> ORIGINS =
            Arrays.stream(Origin.values()).map(StudyReader::word).toList();
    private static final List<String> SORBENTS =
            Arrays.stream(Sorbent.values()).map(Sorbent::id).toList();
    private static final List<String> SETTINGS =
            Arrays.stream(Setting.values()).map(Setting::id).toList();
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    private final SolventCatalogue catalogue;
    private final FunctionalGroups groups;
    private final FaultList faults;

    StudyReader(SolventCatalogue catalogue, FunctionalGroups groups, FaultList faults) {
        this.catalogue = catalogue;
        this.groups = groups;
        this.faults = faults;
    }

    /** How an origin is written. */
    static String word(Origin origin) {
        return origin.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The study.
     *
     * @throws BadInput with all faults
     */
    Study read(Json value) {
        Optional<Study> study = StudyUpgrades.newest(value, faults).flatMap(this::newest);
        faults.throwIfAny();
        return study.orElseThrow();
    }

    private Optional<Study> newest(Json value) {
        return StudyFields.of("", value, faults, REQUIRED, OPTIONAL).flatMap(fields -> {
            digest(fields);
            StudyJars jars = new StudyJars(catalogue, faults);
            StudySpotReader spotReader = new StudySpotReader(groups, faults);
            List<StudySpot> spots = fields.each("spots", StudyFields.MOST, spotReader::read);
            atLeastOne(fields, spots);
            List<StudyPlate> plates =
                    fields.each("plates", StudyFields.MOST, new StudyPlateReader(jars, spotReader, faults)::read);
            Optional<NextJar> next = fields.any("next").flatMap(jar -> jars.next(fields.path("next"), jar, spotReader));
            Optional<StudyId> id = id(fields);
            String title = fields.line("title", LONGEST_TITLE);
            Instant created = fields.time("created");
            Instant modified = fields.time("modified");
            Keeping keeping =
                    fields.truth("archived", Keeping.ARCHIVED, Keeping.AT_HAND).orElse(Keeping.AT_HAND);
            Origin origin = Origin.values()[ORIGINS.indexOf(fields.choice("origin", ORIGINS))];
            String sorbent = fields.choice("sorbent", SORBENTS);
            String setting = fields.choice("setting", SETTINGS);
            List<String> shelf = fields.known("shelf", jars.solvents());
            var advices = fields.each("advices", StudyFields.MOST, new StudyAdviceReader(jars, faults)::read);
            Optional<StudyColumn> column = fields.any("column")
                    .flatMap(entered ->
                            new StudyColumnReader(jars, spotReader, faults).read(fields.path("column"), entered));
            Optional<StudyChecks> checks = fields.any("checks")
                    .flatMap(entered ->
                            new StudyChecksReader(jars, spotReader, faults).read(fields.path("checks"), entered));
            String notes = fields.text("notes", LONGEST_NOTES);
            if (id.isEmpty() || next.isEmpty()) { // told
                return Optional.empty();
            }
            return Optional.of(new Study(
                    id.get(),
                    title,
                    created,
                    modified,
                    keeping,
                    origin,
                    sorbent,
                    setting,
                    shelf,
                    spots,
                    plates,
                    next.get(),
                    advices,
                    column,
                    checks,
                    notes));
        });
    }

    private Optional<StudyId> id(StudyFields fields) {
        Optional<StudyId> id = fields.any("id")
                .flatMap(value -> value instanceof Json.Text text ? StudyId.in(text.value()) : Optional.empty());
        if (fields.has("id") && id.isEmpty()) {
            fields.fault(
                    "id",
                    Message.of("fault.no-study-id"),
                    Message.of("allowed.study-id", "example", "20260914-k7m2q9x4tb"),
                    Message.of("todo.give-study-id"));
        }
        return id;
    }

    private static void atLeastOne(StudyFields fields, List<StudySpot> spots) {
        boolean empty = fields.any("spots")
                .map(value -> value instanceof Json.Items list && list.items().isEmpty())
                .orElse(false);
        if (empty && spots.isEmpty()) {
            fields.fault(
                    "spots",
                    Message.of("fault.no-spots"),
                    Message.of("allowed.spots", "interval", Allowed.closed(1, StudyFields.MOST)),
                    Message.of("todo.name-one-spot"));
        }
    }

    private static void digest(StudyFields fields) {
        boolean fits = fields.any("sha256")
                .map(value -> value instanceof Json.Text text
                        && DIGEST.matcher(text.value()).matches())
                .orElse(true);
        if (!fits) {
            fields.fault(
                    "sha256",
                    Message.of("fault.no-digest"),
                    Message.of("allowed.digest"),
                    Message.of("todo.leave-out"));
        }
    }
}
