package midplate.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Consultation;
import midplate.advice.OtherEluent;
import midplate.advice.OtherRank;
import midplate.advice.OthersWish;
import midplate.advice.Replacements;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.SolventCatalogue;
import midplate.words.Digits;
import midplate.words.Message;

/** Says where a plan may fail, and what else to do. */
final class PlanWarnings {
    private static final double LOW_RF = 0.1;
    private static final double HIGH_RF = 0.5;
    /** A plate's Rf is little known where its band is wider [1]. */
    private static final double WIDE_BAND = 0.2;
    /** Below this chance of a pure cut another pair is looked for [1]. */
    private static final double POOR = 0.6;
    /** Below this, two spots are told as not to be parted [1]. */
    private static final double NONE = 0.05;
    /** By so much must another pair part two spots more often to be named [1]. */
    private static final double CLEARLY = 0.15;
    /** On so many columns the target may still be on it before that is said [1]. */
    private static final double OFTEN = 0.2;
    /** Where it stays on more, that is what spoils the cut, and not its neighbours [1]. */
    private static final double MOSTLY = 0.5;
    /** Another program is named beside one's own when its chance is so much greater [1]. */
    private static final double BETTER = 0.1;
    /** So many times as late on cartridges is told beside a glass column [1]. */
    private static final double LATER = 1.15;
    /** Below this share of a localizing solvent the bed takes up much of it [% v/v]; common practice, no source. */
    private static final double LITTLE_PERCENT = 5;

    private final ChosenProgram chosen;
    private final TrialColumn column;
    private final List<ColumnPlan.SpotBand> bands;
    private final Optional<ColumnPlan.Cut> cut;
    private final SolventCatalogue catalogue;
    private final List<Message> all = new ArrayList<>();

    PlanWarnings(
            ChosenProgram chosen,
            List<ColumnPlan.SpotBand> bands,
            Optional<ColumnPlan.Cut> cut,
            SolventCatalogue catalogue) {
        this.chosen = chosen;
        this.column = chosen.column();
        this.bands = bands;
        this.cut = cut;
        this.catalogue = catalogue;
    }

    /**
     * All of them, the gravest first.
     *
     * @param plates what the plates say, asked for other pairs where the chance is poor
     */
    List<Message> all(Consultation plates) {
        all.clear();
        unshown();
        portions();
        apart();
        betterPair(plates);
        own();
        glass();
        plate();
        load();
        eluent();
        all.addAll(new SampleWarnings(chosen.question(), catalogue).all());
        return List.copyOf(all);
    }

    /** Spots of which nothing shows whether they part: what to do first. */
    private void unshown() {
        if (!chosen.unshown().isEmpty()) {
            all.add(Message.of(
                    "column.not-shown", "others", chosen.names(chosen.unshown()), "target", chosen.target()));
        }
    }

    /** That everything told is for one of several portions. */
    private void portions() {
        chosen.portion().ifPresent(all::add);
        if (chosen.runs() > ChosenProgram.MOST_RUNS) {
            all.add(Message.of("column.too-many-portions", "runs", chosen.runs(), "most", ChosenProgram.MOST_RUNS));
        }
    }

    /** Spots whose bands lie over the target's. */
    private void apart() {
        if (cut.isEmpty()) {
            all.add(Message.of("column.no-cut", "target", chosen.target()));
        }
        if (chosen.program().chance() >= 1 - OFTEN) {
            return;
        }
        double late = column.stays(column.target(), chosen.bands(), chosen.runMl());
        boolean coarse = isCoarse();
        for (int spot = 0; spot < column.law().spots() && late <= MOSTLY && !coarse; spot++) {
            if (spot != column.target() && !chosen.unshown().contains(spot)) {
                double chance = column.chanceBeside(spot, chosen.bands(), chosen.program());
                if (chance < NONE && !isPartedElsewhere()) {
                    all.add(Message.of("column.not-parted", "other", chosen.name(spot), "target", chosen.target()));
                } else if (chance < 1 - OFTEN) {
                    all.add(Message.of(
                            "column.overlaps",
                            "other",
                            chosen.name(spot),
                            "target",
                            chosen.target(),
                            "times",
                            Hundreds.of(chance)));
                }
            }
        }
        if (late > OFTEN) {
            all.add(Message.of(
                    "column.target-late", "target", chosen.target(), "times", Hundreds.of(late), "ml", chosen.runMl()));
        }
    }

    /** Whether one fraction, as it was said, takes in the whole band of the target; that is told. */
    private boolean isCoarse() {
        ColumnPlan.SpotBand band = bands.get(column.target());
        double width = band.endMl().value() - band.startMl().value();
        double fraction = chosen.program().fractionMl();
        boolean coarse = chosen.question().fractionMl().isPresent() && fraction > width;
        if (coarse) {
            all.add(Message.of("column.fraction-coarse", "ml", fraction, "target", chosen.target(), "width", width));
        }
        return coarse;
    }

    /** Whether some single eluent that was tried gives a cut now and then. */
    private boolean isPartedElsewhere() {
        return chosen.isocratic().stream().anyMatch(each -> each.chance() >= NONE);
    }

    /** Another pair of solvents in which the two closest spots come apart clearly more often. */
    private void betterPair(Consultation plates) {
        if (chosen.program().chance() >= POOR || column.law().spots() < 2) {
            return;
        }
        double percent = chosen.program().firstPercent();
        Replacements others = plates.others(new OthersWish(OptionalDouble.of(percent), Optional.of(OtherRank.APART)));
        Optional<OtherEluent> better = others.of()
                .closest()
                .filter(two -> two.one().equals(chosen.target()) || two.other().equals(chosen.target()))
                .flatMap(two -> others.others().stream()
                        .filter(other -> other.equal().isPresent())
                        .filter(other -> other.closest()
                                .filter(there -> there.chance() >= two.chance() + CLEARLY)
                                .isPresent())
                        .findFirst());
        if (better.isEmpty()) {
            all.add(Message.of("column.try-other"));
            return;
        }
        OtherEluent other = better.get();
        others.of()
                .closest()
                .ifPresent(here -> other.closest()
                        .ifPresent(there -> all.add(Message.of(
                                "column.other-pair",
                                "weak",
                                other.weak().said(),
                                "strong",
                                other.strong().said(),
                                "ratio",
                                Message.of(
                                        "column.ratio",
                                        "weak",
                                        other.pour().ratio().weak(),
                                        "strong",
                                        other.pour().ratio().strong()),
                                "one",
                                there.one(),
                                "two",
                                there.other(),
                                "there",
                                Hundreds.of(there.chance()),
                                "here",
                                Hundreds.of(here.chance())))));
    }

    /** One's own program beside the single eluent that would be advised. */
    private void own() {
        if (!chosen.isOwn()) {
            return;
        }
        WeighedProgram best = new ProgramRule(column).choose(chosen.isocratic());
        if (best.chance() >= chosen.program().chance() + BETTER) {
            all.add(Message.of(
                    "column.own-worse",
                    "ratio",
                    chosen.eluent(best.firstPercent()),
                    "times",
                    Hundreds.of(best.chance()),
                    "now",
                    Hundreds.of(chosen.program().chance()),
                    "ml",
                    best.runMl()));
        }
    }

    /** What a plate promises and a column does not hold. */
    private void plate() {
        double percent = chosen.program().firstPercent();
        double rf = column.rf(column.target(), percent);
        if (chosen.gap() < BedLoad.NARROW) {
            all.add(Message.of("column.gap-small", "target", chosen.target(), "gap", chosen.gap()));
        }
        if (rf < LOW_RF && chosen.program().steps() == 1) {
            all.add(Message.of("column.rf-low", "target", chosen.target(), "rf", rf));
        } else if (rf > HIGH_RF) {
            all.add(Message.of("column.rf-high", "target", chosen.target(), "rf", rf));
        }
        Range90 band = bands.get(column.target()).rf();
        if (band.high() - band.low() > WIDE_BAND) {
            all.add(Message.of("column.rf-unsure", "target", chosen.target(), "low", band.low(), "high", band.high()));
        }
    }

    /** How much later measured cartridges bring the target out than the ideal law, by which glass columns are reckoned. */
    private void glass() {
        if (!(column.bed() instanceof GlassColumn)) {
            return;
        }
        Program program = chosen.program().program();
        Bed like = Cartridge.SIZES.stream()
                .map(size -> (Bed) new Cartridge(size))
                .min(Comparator.comparingDouble(each ->
                        Math.abs(Math.log(each.silicaGrams() / column.bed().silicaGrams()))))
                .orElseThrow();
        double scale = like.silicaGrams() / column.bed().silicaGrams();
        Bands there = column.law().bands(like, program.endless().scaled(scale), column.loadMl() * scale);
        double later = TrialColumn.range(there, one -> there.middleMl(column.target(), one))
                        .value()
                / (scale * bands.get(column.target()).middleMl().value());
        if (later > LATER) {
            all.add(Message.of(
                    "column.glass-later",
                    "target",
                    chosen.target(),
                    "times",
                    later,
                    "ml",
                    StepPours.up(later * bands.get(column.target()).middleMl().value())));
        }
    }

    private void load() {
        double mass = chosen.question().massMg();
        if (chosen.runs() > 1) {
            all.add(
                    chosen.question().bed().isPresent()
                            ? Message.of(
                                    "column.load-over",
                                    "massMg",
                                    mass,
                                    "mostMg",
                                    chosen.mostMg(),
                                    "runs",
                                    chosen.runs())
                            : Message.of(
                                    "column.no-bed-carries",
                                    "massMg",
                                    mass,
                                    "mostMg",
                                    chosen.mostMg(),
                                    "runs",
                                    chosen.runs()));
        }
        double mostMl = BedHabits.WET_SHARE * column.voidMl();
        if (!chosen.isDry() && column.loadMl() > mostMl * (1 + 1e-9)) {
            all.add(Message.of("column.load-volume", "ml", column.loadMl(), "mostMl", mostMl));
        }
    }

    private void eluent() {
        LocalizationClass strong =
                catalogue.localization(chosen.question().sample().strong());
        boolean localizing = strong != LocalizationClass.WEAK
                && strong != LocalizationClass.NON_LOCALIZING
                && strong != LocalizationClass.UNKNOWN;
        double percent = chosen.program().firstPercent();
        if (localizing && percent > 0 && percent < LITTLE_PERCENT) {
            all.add(Message.of(
                    "column.little-strong",
                    "percent",
                    Digits.percent(percent),
                    "strong",
                    chosen.question().sample().strong().said()));
        }
    }
}
