package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Outlook;
import midplate.inference.PlateRun;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.words.Digits;
import midplate.words.Message;

/** What must be known beside an advice: where the model is weak, what the plates did not tell, what silica cannot do. */
final class Notes {
    private static final double DEMIXING_BELOW = 5;
    private static final double LIKELY = 0.5;
    private static final double NEAR_LINE = 0.05;
    private static final double COARSE = 0.1;

    private final Question question;
    private final MeasuredPair pair;
    private final SolventCatalogue catalogue;

    Notes(Question question, MeasuredPair pair, SolventCatalogue catalogue) {
        this.question = question;
        this.pair = pair;
        this.catalogue = catalogue;
    }

    List<Message> all(
            Outlook outlook,
            RatioSearch.Found best,
            Forecast forecast,
            Pour pour,
            List<PlateRun> plates,
            double chanceNoRatio) {
        List<Message> notes = new ArrayList<>();
        if (chanceNoRatio > LIKELY) {
            notes.add(Message.of("advice.no-ratio", "times", Reasons.times(chanceNoRatio)));
        }
        limitsOfSilica(outlook, forecast, notes);
        uninformative(plates, notes);
        range(forecast.percentStrong(), notes);
        if (question.additive().isPresent()) {
            notes.add(Message.of(
                    "advice.additive", "additive", question.additive().get()));
        }
        glassware(best, forecast.percentStrong(), pour).ifPresent(notes::add);
        return notes;
    }

    /** Where the glassware cannot measure the optimum, or makes something else of the ratio advised. */
    private Optional<Message> glassware(RatioSearch.Found best, double advised, Pour pour) {
        Glassware glassware = question.glassware();
        double bestStrongMl = glassware.amountMl() * best.percent() / 100;
        boolean tooLittle = bestStrongMl > 0 && bestStrongMl < glassware.graduationMl();
        boolean other = Math.abs(pour.percentStrong() - advised) > COARSE * advised;
        if (!tooLittle && !other) {
            return Optional.empty();
        }
        return Optional.of(Message.of(
                "advice.graduation-coarse",
                "percent",
                Digits.percent(tooLittle ? best.percent() : advised),
                "poured",
                Digits.percent(pour.percentStrong()),
                "graduationMl",
                glassware.graduationMl()));
    }

    private void limitsOfSilica(Outlook outlook, Forecast forecast, List<Message> notes) {
        for (int spot = 0; spot < question.spots().size(); spot++) {
            String name = question.spots().get(spot);
            if (forecast.spots().get(spot).above() > LIKELY
                    && outlook.above(spot, outlook.knowledge().model().lowestPercent()) > LIKELY) {
                boolean alkane = catalogue.localization(pair.weak()) == LocalizationClass.WEAK;
                notes.add(Message.of(
                        alkane ? "advice.silica-cannot-hold" : "advice.runs-in-weak",
                        "spot",
                        name,
                        "weak",
                        question.weak().name()));
            }
            if (outlook.below(spot, outlook.knowledge().model().highestPercent()) > LIKELY) {
                notes.add(Message.of(
                        "advice.too-polar",
                        "spot",
                        name,
                        "strong",
                        question.strong().name(),
                        "percent",
                        Digits.percent(outlook.knowledge().model().highestPercent())));
            }
        }
    }

    /** Spots that were only ever seen at a line. */
    private void uninformative(List<PlateRun> plates, List<Message> notes) {
        for (String spot : question.spots()) {
            List<Reading> readings = plates.stream()
                    .filter(plate -> plate.readings().containsKey(spot))
                    .map(plate -> plate.readings().get(spot))
                    .toList();
            if (readings.isEmpty()) {
                notes.add(
                        Message.of(plates.isEmpty() ? "advice.spot-unread-first" : "advice.spot-unread", "spot", spot));
            } else if (readings.stream().allMatch(Notes::isAtStart)) {
                notes.add(Message.of("advice.only-baseline", "spot", spot));
            } else if (readings.stream().allMatch(Notes::isAtFront)) {
                notes.add(Message.of("advice.only-front", "spot", spot));
            }
        }
    }

    private static boolean isAtStart(Reading reading) {
        return reading.limit() == Limit.AT_START || reading.rf() < NEAR_LINE;
    }

    private static boolean isAtFront(Reading reading) {
        return reading.limit() == Limit.AT_FRONT || reading.rf() > 1 - NEAR_LINE;
    }

    private void range(double percent, List<Message> notes) {
        LocalizationClass kind = catalogue.localization(pair.strong());
        boolean localizing = kind == LocalizationClass.LOCALIZING_BASIC
                || kind == LocalizationClass.LOCALIZING_NON_BASIC
                || kind == LocalizationClass.VERY_STRONG_LOCALIZING;
        boolean alkane = catalogue.localization(pair.weak()) == LocalizationClass.WEAK;
        if (alkane && localizing && percent > 0 && percent < DEMIXING_BELOW) {
            notes.add(Message.of(
                    "advice.demixing",
                    "percent",
                    percent,
                    "strong",
                    question.strong().name()));
        }
        if (percent < pair.trustedFrom() || percent > pair.trustedTo()) {
            notes.add(Message.of(
                    "advice.untrusted-range",
                    "percent",
                    Digits.percent(percent),
                    "from",
                    pair.trustedFrom(),
                    "to",
                    pair.trustedTo()));
        }
    }
}
