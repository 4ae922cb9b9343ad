package midplate.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import midplate.catalogue.FlashColumn;
import midplate.catalogue.FlashColumns;
import midplate.words.Allowed;
import midplate.words.Message;

/** Says why a plan is as it is. */
final class PlanReasons {
    /** A spot that stays on so many columns stays mostly [1]. */
    private static final double STAYS = 0.5;
    /** Where the target is left on more columns, the run is not one that brings it out on 19 of 20 [1]. */
    private static final double LATE = 0.075;

    private static final double HUNDRED = 100;
    /** A plate does not show so small a distance [1 in Rf]. */
    private static final double UNREADABLE = 0.005;
    /** Column volumes of the strong solvent that wash the rest off; common practice, no source. */
    private static final double FLUSH_VOIDS = 3;

    private final ChosenProgram chosen;
    private final TrialColumn column;
    private final double percent;
    private final double endMl;
    private final double bandMl;

    /**
     * Reasons for a plan.
     *
     * @param target when the target leaves
     */
    PlanReasons(ChosenProgram chosen, ColumnPlan.SpotBand target) {
        this.chosen = chosen;
        this.column = chosen.column();
        this.endMl = target.endMl().value();
        this.bandMl = endMl - target.startMl().value();
        this.percent = chosen.program().firstPercent();
    }

    List<Message> all() {
        List<Message> all = new ArrayList<>();
        eluent(all);
        double late = column.stays(column.target(), chosen.bands(), chosen.runMl());
        if (!Double.isFinite(chosen.program().program().volumeMl()) && late <= LATE) {
            all.add(Message.of("column.why-volume", "target", chosen.target(), "likely", endMl, "ml", chosen.runMl()));
        }
        bed(all);
        all.add(column.bed().basis().said());
        if (column.bed() instanceof Cartridge && column.law().conditions() == BandLaw.Conditions.OTHER) {
            all.add(Message.of("column.pair-not-measured"));
        }
        loading(all);
        fractions(all);
        if (late <= STAYS) {
            stays(all);
        }
        return List.copyOf(all);
    }

    private void eluent(List<Message> all) {
        if (chosen.program().steps() > 1) {
            all.add(Message.of("column.why-steps", "steps", steps()));
        }
        all.add(place());
        if (chosen.isOwn()) {
            all.add(Message.of("column.own-program"));
            return;
        }
        if (!chosen.unshown().isEmpty()) {
            all.add(Message.of(
                    "column.why-unshown",
                    "target",
                    chosen.target(),
                    "others",
                    chosen.names(chosen.unshown()),
                    "voids",
                    (int) TrialColumn.MOST_VOIDS_UNSHOWN));
            return;
        }
        if (chosen.program().steps() > 1) {
            overOne(all);
            return;
        }
        rule(all);
        chosen.steps().stream()
                .findFirst()
                .ifPresent(two -> all.add(
                        Message.of("column.why-one-eluent", "times", Hundreds.of(two.chance()), "ml", two.runMl())));
    }

    private Message steps() {
        List<Message> steps = new ArrayList<>();
        for (Program.Step step :
                chosen.program().program().until(chosen.runMl()).steps()) {
            steps.add(Message.of("column.step", "ratio", chosen.eluent(step.percentStrong()), "ml", step.volumeMl()));
        }
        return Allowed.list(steps);
    }

    /** Where target and neighbour lie on a plate. */
    private Message place() {
        OptionalInt neighbour = column.neighbour(percent);
        double rf = column.rf(column.target(), percent);
        if (neighbour.isEmpty()) {
            return Message.of("column.why-alone", "ratio", chosen.eluent(percent), "target", chosen.target(), "rf", rf);
        }
        int other = neighbour.getAsInt();
        double gap = column.gap(percent);
        if (gap < UNREADABLE) {
            return Message.of(
                    "column.why-eluent-alike",
                    "ratio",
                    chosen.eluentWithShare(percent),
                    "target",
                    chosen.target(),
                    "rf",
                    rf,
                    "other",
                    chosen.name(other));
        }
        return Message.of(
                "column.why-eluent",
                "ratio",
                chosen.eluentWithShare(percent),
                "target",
                chosen.target(),
                "rf",
                rf,
                "other",
                chosen.name(other),
                "otherRf",
                column.rf(other, percent),
                "gap",
                gap,
                "volumes",
                Math.abs(1 / rf - 1 / column.rf(other, percent)));
    }

    /** Why not weaker, why not stronger. */
    private void rule(List<Message> all) {
        if (chosen.isocratic().size() < 2) {
            return;
        }
        all.add(Message.of(
                "column.rule",
                "margin",
                (int) Math.round(HUNDRED * new ProgramRule(column).margin()),
                "highest",
                ProgramRule.HIGHEST_RF,
                "higher",
                ProgramRule.HIGHER_RF,
                "long",
                (int) ProgramRule.LONG_VOIDS,
                "most",
                (int) ProgramRule.MOST_VOIDS));
        next(each -> each.firstPercent() < percent, -1)
                .ifPresent(weaker -> all.add(beside("column.why-not-weaker", weaker)));
        next(each -> each.firstPercent() > percent, 1)
                .ifPresent(stronger -> all.add(beside("column.why-not-stronger", stronger)));
    }

    private Optional<WeighedProgram> next(Predicate<WeighedProgram> side, int order) {
        return chosen.isocratic().stream()
                .filter(side)
                .min((one, other) -> order * Double.compare(one.firstPercent(), other.firstPercent()));
    }

    private Message beside(String key, WeighedProgram other) {
        return Message.of(
                key,
                "ratio",
                chosen.eluent(other.firstPercent()),
                "rf",
                column.rf(column.target(), other.firstPercent()),
                "times",
                Hundreds.of(other.chance()),
                "ml",
                other.runMl(),
                "now",
                Hundreds.of(chosen.program().chance()),
                "nowMl",
                chosen.runMl());
    }

    /** What several eluents give beyond the best single one. */
    private void overOne(List<Message> all) {
        WeighedProgram one = new ProgramRule(column).choose(chosen.isocratic());
        all.add(Message.of(
                "column.why-not-one",
                "ratio",
                chosen.eluent(one.firstPercent()),
                "times",
                Hundreds.of(one.chance()),
                "ml",
                one.runMl(),
                "now",
                Hundreds.of(chosen.program().chance()),
                "nowMl",
                chosen.runMl()));
    }

    private void bed(List<Message> all) {
        Message bed = named(column.bed());
        all.add(
                !chosen.unshown().isEmpty()
                        ? Message.of("column.bed-unshown", "bed", bed, "mostMg", chosen.mostMg())
                        : chosen.gap() >= BedLoad.WIDE
                                ? Message.of("column.bed-carries-wide", "bed", bed, "mostMg", chosen.mostMg())
                                : chosen.gap() >= BedLoad.NARROW
                                        ? Message.of("column.bed-carries-narrow", "bed", bed, "mostMg", chosen.mostMg())
                                        : Message.of("column.bed-carries-less", "bed", bed, "mostMg", chosen.mostMg()));
        if (chosen.question().bed().isEmpty() && chosen.runs() == 1) {
            all.add(Message.of("column.bed-smallest"));
        }
        if (column.bed() instanceof Cartridge) {
            all.add(Message.of("column.bed-by-ratio"));
        }
    }

    static Message named(Bed bed) {
        return bed instanceof GlassColumn glass
                ? Message.of("column.glass", "diameterMm", glass.diameterMm(), "bedMm", glass.bedMm())
                : Message.of("column.cartridge", "grams", bed.silicaGrams());
    }

    private void loading(List<Message> all) {
        if (chosen.question().loading() == Loading.DRY) {
            all.add(Message.of(
                    "column.load-dry", "grams", BedHabits.drySilicaGrams(chosen.portionMg()), "ml", column.loadMl()));
        } else {
            all.add(Message.of(
                    "column.load-wet", "ml", column.loadMl(), "mostMl", BedHabits.WET_SHARE * column.voidMl()));
        }
    }

    private void fractions(List<Message> all) {
        if (column.bed() instanceof GlassColumn glass) {
            all.add(Message.of(
                    "column.table-eluent",
                    "ml",
                    FlashColumns.builtIn().at(glass.diameterMm(), FlashColumn::eluentMl),
                    "fractionMl",
                    FlashColumns.builtIn().at(glass.diameterMm(), FlashColumn::fractionMl)));
        }
        if (chosen.question().fractionMl().isEmpty()) {
            all.add(Message.of(
                    "column.why-fraction",
                    "ml",
                    chosen.program().fractionMl(),
                    "target",
                    chosen.target(),
                    "parts",
                    bandMl / chosen.program().fractionMl(),
                    "most",
                    BedHabits.MOST_TUBES));
        }
    }

    /** What need not be waited for. */
    private void stays(List<Message> all) {
        List<Message> left = new ArrayList<>();
        for (int spot = 0; spot < column.law().spots(); spot++) {
            if (spot != column.target() && column.stays(spot, chosen.bands(), chosen.runMl()) > STAYS) {
                left.add(Allowed.words(chosen.name(spot)));
            }
        }
        if (!left.isEmpty()) {
            all.add(Message.of(
                    "column.stays",
                    "spots",
                    Allowed.list(left),
                    "target",
                    chosen.target(),
                    "strong",
                    chosen.question().sample().strong().said(),
                    "ml",
                    StepPours.up(FLUSH_VOIDS * column.voidMl())));
        }
    }
}
