package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.Curves;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.inference.Knowledge;
import midplate.inference.PairModel;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The same sample on another layer, as an illustration by theory alone: nothing was measured there, so nothing is said of chances.
 *
 * <p>Snyder's law {@code log10(k₁/k₂) = α′·A_s·(ε₂ − ε₁)} is used from the pure weak solvent to the mixture, on either layer with the
 * strengths of that layer. It is assumed that each compound has the same k on both layers in the weak solvent, and that α′ is the same.
 * Then on the other layer {@code ln k = ln k(here) − ln 10·α′·A_s·((ε − ε_A)(there) − (ε − ε_A)(here))}, with k(here) as the model of the
 * plate has it. A_s follows from the model's s: {@code A_s = s·κ/(ln 10·α′)}.
 *
 * @param sorbent the other layer
 * @param percentStrong shares of the strong solvent [% v/v]
 * @param here ε [1] at each share on the layer of the lesson
 * @param there ε [1] at each share on the other layer
 * @param spots what each compound does there, in the order of the lesson
 * @see "Snyder1968"
 */
public record OtherLayer(
        Sorbent sorbent, List<Double> percentStrong, List<Double> here, List<Double> there, List<Spot> spots) {
    /** On a line an Rf says nothing of k: it is read as this near to it [1]. */
    private static final double NEAR_LINE = 0.002;

    private static final double LN10 = Math.log(10);

    /** Keeps its own copies. */
    public OtherLayer {
        percentStrong = List.copyOf(percentStrong);
        here = List.copyOf(here);
        there = List.copyOf(there);
        spots = List.copyOf(spots);
    }

    /**
     * A compound on the other layer.
     *
     * @param name of the compound
     * @param soluteArea A_s [8.5 Å²]
     * @param rf Rf [1] at each share
     */
    public record Spot(String name, double soluteArea, List<Double> rf) {
        /** Keeps its own copy. */
        public Spot {
            rf = List.copyOf(rf);
        }
    }

    /**
     * Another layer beside that of the lesson.
     *
     * @param curves what the model foretells on the layer of the lesson
     */
    static OtherLayer of(
            SolventCatalogue catalogue, LessonSample sample, Sorbent other, Knowledge knowledge, Curves curves) {
        PublishedStrength here = strength(catalogue, sample, sample.sorbent());
        PublishedStrength there = strength(catalogue, sample, other);
        PairModel model = knowledge.model();
        List<Double> percents = curves.percentStrong();
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < sample.compounds().size(); i++) {
            String name = sample.compounds().get(i).name();
            Curves.SpotCurve curve =
                    Optional.ofNullable(curves.spots().get(name)).orElseThrow();
            double area = area(knowledge.meanS(i));
            List<Double> rf = new ArrayList<>();
            for (int at = 0; at < percents.size(); at++) {
                double more = gain(there, percents.get(at)) - gain(here, percents.get(at));
                rf.add(moved(model, curve.rf().get(at), area, more));
            }
            spots.add(new Spot(name, area, rf));
        }
        return new OtherLayer(
                other,
                percents,
                percents.stream().map(here::at).toList(),
                percents.stream().map(there::at).toList(),
                spots);
    }

    /** What is assumed, what follows from that alone, what the picture does show, and what must not be read from it. */
    public List<Message> sentences(LessonSample sample) {
        return List.of(
                Message.of(
                        "lesson.series-layer-assumed",
                        "here",
                        sample.sorbent().said(),
                        "there",
                        sorbent.said(),
                        "weak",
                        sample.weak().said(),
                        "activity",
                        PublishedStrength.theory().activity()),
                Message.of(
                        "lesson.series-layer-shows",
                        "here",
                        sample.sorbent().said(),
                        "there",
                        sorbent.said(),
                        "weak",
                        sample.weak().said(),
                        "strong",
                        sample.strong().said(),
                        "hereGain",
                        gain(here),
                        "thereGain",
                        gain(there)),
                Message.of(
                        "lesson.series-layer-limits",
                        "there",
                        sorbent.said(),
                        "weak",
                        sample.weak().said()));
    }

    private static double gain(List<Double> strengths) {
        return strengths.get(strengths.size() - 1) - strengths.get(0);
    }

    /** A_s [8.5 Å²] of a compound whose curve climbs s times as steeply as the average. */
    static double area(double s) {
        return s
                * PublishedStrength.theory().slope()
                / (LN10 * PublishedStrength.theory().activity());
    }

    /** By how much a mixture is stronger than the pure weak solvent, ε [1]. */
    private static double gain(PublishedStrength strength, double percent) {
        return strength.at(percent) - strength.at(0);
    }

    /** The Rf [1] of a spot where the eluent is stronger by so much, ε [1], less where it is negative. */
    private static double moved(PairModel model, double rf, double area, double more) {
        double held = Math.max(NEAR_LINE, Math.min(1 - NEAR_LINE, rf));
        double less = EluentStrength.logCapacityRatio(
                PublishedStrength.theory().activity(), area, Math.max(0, -more), Math.max(0, more));
        return model.rf(model.eta(held) + less);
    }

    private static PublishedStrength strength(SolventCatalogue catalogue, LessonSample sample, Sorbent sorbent) {
        return PublishedStrength.of(catalogue, sorbent, sample.weak(), sample.strong())
                .orElseThrow(() -> new Refusal(
                        "otherLayer",
                        Message.of(
                                "lesson.series-layer-unknown",
                                "weak",
                                sample.weak().said(),
                                "strong",
                                sample.strong().said(),
                                "sorbent",
                                sorbent.said()),
                        sorbent.id(),
                        Message.of(
                                "allowed.solvents-of-layer",
                                "solvents",
                                Allowed.list(published(catalogue, sorbent).stream()
                                        .map(Solvent::said)
                                        .toList())),
                        Message.of("todo.take-solvents-of-layer")));
    }

    /** The solvents whose strength and area are published for a layer. */
    private static List<Solvent> published(SolventCatalogue catalogue, Sorbent sorbent) {
        return catalogue.solvents().stream()
                .filter(solvent -> catalogue
                        .component(solvent, sorbent, PublishedStrength.series())
                        .isPresent())
                .toList();
    }
}
