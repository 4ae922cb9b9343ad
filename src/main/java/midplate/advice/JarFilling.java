package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.FrontMigration;
import midplate.chemistry.Solvent;
import midplate.words.Message;

/** Works out the card for the jar: how high the eluent stands, how long the front takes, what does not fit. */
final class JarFilling {
    /** Room to leave between the eluent and the start line [mm]; common practice, no source. */
    private static final double ROOM_MM = 3;
    /** Eluent deeper than this is not needed [mm]; common practice, no source. */
    private static final double DEEP_ENOUGH_MM = 5;
    /** Eluent lower than this may not wet the plate's whole edge [mm]; common practice, no source. */
    private static final double SHALLOW_MM = 2;
    /** A jar narrower than this hardly takes a plate 25 mm wide beside its paper [mm]; common practice, no source. */
    private static final double NARROW_MM = 30;
    /** A run below this parts little [mm]; common practice, no source. */
    private static final double SHORT_RUN_MM = 40;
    /** Room to leave between front and top [mm]; common practice, no source. */
    private static final double TOP_ROOM_MM = 5;

    /** A level so little beyond what is right is not told: one graduation more or less [mm]. */
    private static final double SLACK_MM = 0.1;

    private static final double MM3_PER_ML = 1000;
    private static final double SECONDS_PER_MINUTE = 60;

    private final Question question;
    private final Pour pour;
    private final NextPlate plate;
    private final SolventCatalogue catalogue;
    private final double levelMm;

    JarFilling(Question question, Pour pour, SolventCatalogue catalogue) {
        this.question = question;
        this.pour = pour;
        this.plate = question.wishes().nextPlate();
        this.catalogue = catalogue;
        this.levelMm = (pour.weakMl() + pour.strongMl()) * MM3_PER_ML / plate.baseMm2();
    }

    PourCard card() {
        return new PourCard(
                levelMm,
                plate.startMm(),
                plate.frontMm(),
                plate.frontMm() - plate.startMm(),
                time(),
                order(),
                Message.of("card.paper"),
                warnings());
    }

    private List<Solvent> poured() {
        List<Solvent> poured = new ArrayList<>();
        if (pour.weakMl() > 0) {
            poured.add(question.weak());
        }
        if (pour.strongMl() > 0) {
            poured.add(question.strong());
        }
        return poured;
    }

    /** Between the times of the solvents poured, each taken alone, widened by what the theory leaves open. */
    private Optional<PourCard.Time> time() {
        double rise = plate.frontMm() - levelMm;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        FrontSpeeds speeds = FrontSpeeds.of(catalogue);
        for (Solvent solvent : poured()) {
            Optional<FrontSpeed> speed = speeds.published(solvent);
            if (speed.isEmpty() || rise <= 0) {
                return Optional.empty();
            }
            low = Math.min(low, FrontMigration.seconds(rise, speed.get().fast()) / SECONDS_PER_MINUTE);
            high = Math.max(high, FrontMigration.seconds(rise, speed.get().slow()) / SECONDS_PER_MINUTE);
        }
        return Optional.of(new PourCard.Time(low, high));
    }

    private Message order() {
        List<Solvent> poured = poured();
        if (poured.size() == 1) {
            return Message.of(
                    "card.order-pure", "solvent", poured.get(0).said(), "amountMl", pour.weakMl() + pour.strongMl());
        }
        return Message.of(
                "card.order",
                "weakMl",
                pour.weakMl(),
                "weak",
                question.weak().said(),
                "strongMl",
                pour.strongMl(),
                "strong",
                question.strong().said());
    }

    private List<Message> warnings() {
        List<Message> warnings = new ArrayList<>();
        level(warnings);
        if (plate.jarDiameterMm() < NARROW_MM) {
            warnings.add(Message.of("card.jar-narrow", "diameterMm", plate.jarDiameterMm()));
        }
        double run = plate.frontMm() - plate.startMm();
        if (run < SHORT_RUN_MM) {
            warnings.add(Message.of("card.run-short", "runMm", run, "leastMm", SHORT_RUN_MM));
        }
        double room = plate.heightMm() - plate.frontMm();
        if (room < TOP_ROOM_MM) {
            warnings.add(Message.of("card.stop-near-top", "stopMm", plate.frontMm(), "roomMm", room));
        }
        return warnings;
    }

    /** Too high or too low for the start line, with the amount that is right. */
    private void level(List<Message> warnings) {
        double right = Math.min(DEEP_ENOUGH_MM, plate.startMm() - ROOM_MM);
        if (right < SHALLOW_MM) {
            warnings.add(Message.of("card.start-low", "startMm", plate.startMm(), "leastMm", ROOM_MM + SHALLOW_MM));
            return;
        }
        double rightMl = right * plate.baseMm2() / MM3_PER_ML;
        if (levelMm >= plate.startMm()) {
            warnings.add(level("card.level-over-start", right, rightMl));
        } else if (levelMm > plate.startMm() - ROOM_MM + SLACK_MM) {
            warnings.add(level("card.level-near-start", right, rightMl));
        } else if (levelMm < SHALLOW_MM) {
            warnings.add(level("card.level-low", right, rightMl));
        }
    }

    private Message level(String key, double rightMm, double rightMl) {
        return Message.of(key, "levelMm", levelMm, "startMm", plate.startMm(), "rightMl", rightMl, "rightMm", rightMm);
    }
}
