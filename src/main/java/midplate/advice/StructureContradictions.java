package midplate.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.inference.Climb;
import midplate.inference.PairModel;
import midplate.inference.PlateModels;
import midplate.inference.PlateRun;
import midplate.inference.StructureForecast;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * Readings that the structure of their spot does not foretell. The reading wins; the note says what to check.
 *
 * <p>A structure foretells c and s as normal, so {@code η = a·c + s·G + t·L} is normal with variance {@code a²·Var c + G²·Var s +
 * L²}, t [1] having variance 1. The band holds 98 of 100 compounds: from its middle each side reaches as far as 2.326 standard
 * deviations of η do in Rf, and 2.326 times the scatter of a reading there (a plate's own error included), added in squares. The
 * few compounds in a hundred that a structure is taken to be wrong for are no part of it.
 */
final class StructureContradictions {
    /** Of a normal variable 98 in 100 lie within so many standard deviations. */
    private static final double WITHIN = 2.326;

    /** So many readings are told with numbers. */
    private static final int MOST_READINGS = 4;

    private final PlateModels models;
    private final PairModel model;
    private final Setting setting;

    StructureContradictions(PlateModels models, PairModel model, Setting setting) {
        this.models = models;
        this.model = model;
        this.setting = setting;
    }

    /** What readings to expect of a structure [1]. */
    record Band(double low, double high) {
        /** By how much a reading lies outside [1]; a bound that allows a place inside does not. */
        double outside(Reading reading) {
            double below = reading.limit() == Limit.AT_FRONT ? 0 : low - reading.rf();
            double above = reading.limit() == Limit.AT_START ? 0 : reading.rf() - high;
            return Math.max(0, Math.max(below, above));
        }
    }

    /** A reading outside of its band. */
    private record Finding(String spot, PlateRun plate, Band band, Reading reading) {
        private double outside() {
            return band.outside(reading);
        }

        private boolean isLow() {
            return reading.rf() < band.low();
        }
    }

    /**
     * What readings contradict: two spots whose names only need to be exchanged; then, where several spots ran lower than their
     * structures say, or higher, one note for all of them; otherwise one for each spot, with its farthest reading.
     */
    List<Message> in(List<PlateRun> plates, Question question) {
        Map<String, List<Finding>> findings = new LinkedHashMap<>();
        for (String spot : question.spots()) {
            forecast(question, spot)
                    .map(forecast -> findings(spot, forecast, plates))
                    .filter(found -> !found.isEmpty())
                    .ifPresent(found -> findings.put(spot, found));
        }
        List<Message> notes = exchanged(findings, question);
        List<Finding> farthest = findings.values().stream()
                .map(found -> Collections.max(found, Comparator.comparingDouble(Finding::outside)))
                .toList();
        notes.addAll(told(farthest.stream().filter(Finding::isLow).toList(), "advice.structure-ran-low"));
        notes.addAll(told(farthest.stream().filter(found -> !found.isLow()).toList(), "advice.structure-ran-high"));
        return notes;
    }

    private Optional<StructureForecast> forecast(Question question, String spot) {
        return Optional.ofNullable(question.structures().get(spot))
                .flatMap(counts -> models.forecast(model.id(), counts));
    }

    private List<Finding> findings(String spot, StructureForecast forecast, List<PlateRun> plates) {
        List<Finding> found = new ArrayList<>();
        for (PlateRun plate : plates) {
            Reading reading = plate.readings().get(spot);
            if (reading != null) {
                found.add(new Finding(spot, plate, band(forecast, plate.percent()), reading));
            }
        }
        found.removeIf(finding -> !(finding.outside() > 0));
        return found;
    }

    /** Pairs of spots whose only contradictions end when their names on one plate are exchanged; these are taken out. */
    private List<Message> exchanged(Map<String, List<Finding>> findings, Question question) {
        List<Message> notes = new ArrayList<>();
        for (String one : question.spots()) {
            for (String other : question.spots()) {
                List<Finding> here = findings.getOrDefault(one, List.of());
                List<Finding> there = findings.getOrDefault(other, List.of());
                boolean once = here.size() == 1 && there.size() == 1 && !one.equals(other);
                if (once && suits(here.get(0), there.get(0))) {
                    notes.add(Message.of(
                            "advice.structure-exchanged",
                            "one",
                            one,
                            "other",
                            other,
                            "percent",
                            Digits.percent(here.get(0).plate().percent())));
                    findings.keySet().removeAll(Set.of(one, other));
                }
            }
        }
        return notes;
    }

    private static boolean suits(Finding one, Finding other) {
        return one.plate().number() == other.plate().number()
                && one.band().outside(other.reading()) == 0
                && other.band().outside(one.reading()) == 0;
    }

    /** One note for each; for several one note. */
    private static List<Message> told(List<Finding> findings, String together) {
        if (findings.size() < 2) {
            return findings.stream().map(StructureContradictions::told).toList();
        }
        return List.of(Message.of(
                together,
                "spots",
                Allowed.list(findings.stream()
                        .map(found -> Allowed.words(found.spot()))
                        .toList()),
                "readings",
                Allowed.list(findings.stream()
                        .sorted(Comparator.comparingDouble(Finding::outside).reversed())
                        .limit(MOST_READINGS)
                        .map(found -> Message.of(
                                "advice.structure-reading",
                                "spot",
                                found.spot(),
                                "where",
                                where(found.reading()),
                                "low",
                                found.band().low(),
                                "high",
                                found.band().high(),
                                "percent",
                                Digits.percent(found.plate().percent())))
                        .toList())));
    }

    private static Message told(Finding found) {
        return Message.of(
                "advice.structure-contradicted",
                "spot",
                found.spot(),
                "percent",
                Digits.percent(found.plate().percent()),
                "low",
                found.band().low(),
                "high",
                found.band().high(),
                "where",
                where(found.reading()));
    }

    /** Where a spot was read, in words at the lines. */
    private static Message where(Reading reading) {
        return switch (reading.limit()) {
            case AT_START -> Message.of("advice.read-at-start");
            case AT_FRONT -> Message.of("advice.read-at-front");
            case NONE -> Message.of("advice.read-at", "rf", reading.rf());
        };
    }

    /** The band on a plate of a share [% v/v]. */
    Band band(StructureForecast forecast, double percent) {
        Climb climb = model.climb(percent);
        double eta = climb.eta(forecast.c(), forecast.s(), 0);
        double variance = square(climb.hold()) * forecast.varianceC()
                + square(climb.strength()) * forecast.varianceS()
                + square(climb.early());
        double reach = WITHIN * Math.sqrt(variance);
        return new Band(edge(eta, -reach, percent), edge(eta, reach, percent));
    }

    private double edge(double eta, double reach, double percent) {
        double middle = model.rf(eta);
        double edge = model.rf(eta + reach);
        double side = Math.hypot(edge - middle, WITHIN * model.scatter(percent, edge, setting));
        return Math.max(0, Math.min(1, middle + Math.signum(reach) * side));
    }

    private static double square(double value) {
        return value * value;
    }
}
