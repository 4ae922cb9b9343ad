package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
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
    /** Of 100: from here to there "probably" is said, below "perhaps", above "most likely"; common practice, no source. */
    private static final int MOST_TIMES = 99;

    private static final int PROBABLY_FROM = 65;

    private static final int PROBABLY_TO = 85;
    private static final double NEAR_LINE = 0.05;
    private static final double COARSE = 0.1;
    /** Within this two spots of one plate are not told apart [1]; common practice, no source. */
    private static final double ALIKE = 0.015;

    private final Question question;
    private final PlatePair pair;
    private final SolventCatalogue catalogue;
    private final Suggestions suggestions;
    private final Set<String> judged;

    /** @param judged spots of which their structure says something in this pair */
    Notes(Question question, PlatePair pair, List<PlatePair> measured, SolventCatalogue catalogue, Set<String> judged) {
        this.judged = Set.copyOf(judged);
        this.question = question;
        this.pair = pair;
        this.catalogue = catalogue;
        this.suggestions = new Suggestions(question, pair, measured, catalogue);
    }

    List<Message> all(
            Outlook outlook,
            RatioSearch.Found best,
            Forecast forecast,
            Pour pour,
            UsedRuns runs,
            double chanceNoRatio) {
        List<Message> notes = new ArrayList<>();
        if (pair.basis() != PairBasis.MEASURED) {
            notes.add(basis(runs));
        }
        if (chanceNoRatio > LIKELY) {
            notes.add(noRatio(Reasons.times(chanceNoRatio)));
        }
        limitsOfSilica(outlook, forecast, notes);
        uninformative(runs, Identities.of(outlook.knowledge()), notes);
        LastPlate.of(question, runs.own(), outlook.knowledge())
                .flatMap(plate -> plate.note(forecast.percentStrong()))
                .ifPresent(notes::add);
        alike(runs.own(), notes);
        range(forecast.percentStrong(), notes);
        if (question.additive().isPresent()) {
            notes.add(Message.of(
                    "advice.additive", "additive", question.additive().get()));
        }
        glassware(best, forecast.percentStrong(), pour).ifPresent(notes::add);
        return notes;
    }

    /** What a pair rests on that was not measured, with the names of the solvents in the jar. */
    private Message basis(UsedRuns runs) {
        boolean wasRun = runs.own().stream().anyMatch(plate -> !plate.readings().isEmpty());
        String key = pair.basis() == PairBasis.GUESS ? "advice.guess-pair" : "advice.theory-pair";
        return Message.of(
                wasRun ? "advice.theory-own-plates" : key,
                "weak",
                question.weak().said(),
                "strong",
                question.strong().said());
    }

    /** That no ratio may work, in words as strong as the number. */
    private static Message noRatio(int counted) {
        int times = Math.min(MOST_TIMES, counted); // drawn samples cannot tell that none at all has a ratio
        if (times < PROBABLY_FROM) {
            return Message.of("advice.no-ratio-perhaps", "times", times);
        }
        return Message.of(times <= PROBABLY_TO ? "advice.no-ratio-probably" : "advice.no-ratio", "times", times);
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
                tooLittle ? Digits.aboutPercent(best.percent()) : Digits.percent(advised),
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
                notes.add(
                        alkane
                                ? Message.of(
                                        "advice.silica-cannot-hold",
                                        "spot",
                                        name,
                                        "weak",
                                        question.weak().said())
                                : suggestions.runsInWeak(name));
            }
            if (outlook.below(spot, outlook.knowledge().model().highestPercent()) > LIKELY) {
                notes.add(suggestions.tooPolar(
                        name, Digits.aboutPercent(outlook.knowledge().model().highestPercent())));
            }
        }
    }

    /** Spots that were only ever seen at a line. */
    private void uninformative(UsedRuns runs, Identities identities, List<Message> notes) {
        for (String spot : question.spots()) {
            if (identities.isProbablySeen(spot)
                    || runs.others().stream().anyMatch(plate -> plate.readings().containsKey(spot))) {
                continue;
            }
            List<Reading> readings = runs.own().stream()
                    .filter(plate -> plate.readings().containsKey(spot))
                    .map(plate -> plate.readings().get(spot))
                    .toList();
            if (readings.isEmpty() && judged.contains(spot)) {
                continue;
            }
            if (readings.isEmpty()) {
                notes.add(Message.of(unread(runs), "spot", spot));
            } else if (readings.stream().allMatch(Notes::isAtStart)) {
                notes.add(Message.of("advice.only-baseline", "spot", spot));
            } else if (readings.stream().allMatch(Notes::isAtFront)) {
                notes.add(Message.of("advice.only-front", "spot", spot));
            }
        }
    }

    private String unread(UsedRuns runs) {
        if (!runs.own().isEmpty()) {
            return "advice.spot-unread";
        }
        return judged.isEmpty() ? "advice.spot-unread-first" : "advice.spot-unread-first-name";
    }

    /** Spots that read the same wherever both were read. */
    private void alike(List<PlateRun> plates, List<Message> notes) {
        for (int i = 0; i < question.spots().size(); i++) {
            for (int j = i + 1; j < question.spots().size(); j++) {
                String one = question.spots().get(i);
                String other = question.spots().get(j);
                List<PlateRun> both = plates.stream()
                        .filter(plate -> plate.readings().keySet().containsAll(List.of(one, other)))
                        .toList();
                if (!both.isEmpty() && both.stream().allMatch(plate -> isAlike(plate, one, other))) {
                    notes.add(Message.of("advice.may-be-one", "one", one, "other", other));
                }
            }
        }
    }

    private static boolean isAlike(PlateRun plate, String one, String other) {
        Reading here = plate.readings().get(one);
        Reading there = plate.readings().get(other);
        return here != null
                && there != null
                && here.limit() == Limit.NONE
                && there.limit() == Limit.NONE
                && Math.abs(here.rf() - there.rf()) < ALIKE;
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
            notes.add(suggestions.demixing(Digits.percent(percent)));
        }
        if (percent < pair.trustedFrom() - PourableRatios.PRINTED
                || percent > pair.trustedTo() + PourableRatios.PRINTED) {
            notes.add(Message.of(
                    pair.basis() == PairBasis.MEASURED ? "advice.untrusted-range" : "advice.untrusted-range-theory",
                    "percent",
                    Digits.percent(percent),
                    "from",
                    pair.trustedFrom(),
                    "to",
                    pair.trustedTo()));
        }
    }
}
