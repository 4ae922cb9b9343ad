package midplate.column;

import java.util.ArrayList;
import java.util.List;

/** Chooses bed and program together. */
final class ColumnChoice {
    private ColumnChoice() {}

    /**
     * On the bed given, or on the smallest that carries the sample. How much a bed carries depends on how far the spots lie apart in the
     * eluent chosen, and that a little on the bed: so beds are taken one after the other, each larger than the one before.
     */
    static ChosenProgram of(ColumnQuestion question, BandLaw law) {
        ChosenProgram whole = onSomeBed(question, law);
        if (whole.runs() == 1) {
            return whole;
        }
        return on(whole.column().bed(), question, law, question.elution(), question.massMg() / whole.runs());
    }

    private static ChosenProgram onSomeBed(ColumnQuestion question, BandLaw law) {
        if (question.bed().isPresent()) {
            return on(question.bed().get(), question, law, question.elution());
        }
        Bed bed = BedLoad.smallest(question.massMg(), Double.POSITIVE_INFINITY).orElseGet(BedLoad::largest);
        ColumnQuestion.Elution quick = ColumnQuestion.Elution.ISOCRATIC;
        while (true) {
            ChosenProgram thought = on(bed, question, law, quick);
            if (carries(thought)) {
                ChosenProgram chosen =
                        quick == question.elution() ? thought : on(bed, question, law, question.elution());
                if (carries(chosen)) {
                    return chosen;
                }
                thought = chosen;
            }
            bed = larger(bed, question.massMg(), thought.gap());
        }
    }

    private static boolean carries(ChosenProgram chosen) {
        return chosen.mostMg() >= chosen.question().massMg()
                || chosen.column().bed().equals(BedLoad.largest());
    }

    /** The smallest bed that carries a mass, of those larger than one. */
    private static Bed larger(Bed bed, double massMg, double gap) {
        return BedLoad.smallest(massMg, gap)
                .filter(found -> found.silicaGrams() > bed.silicaGrams())
                .orElseGet(BedLoad::largest);
    }

    private static ChosenProgram on(Bed bed, ColumnQuestion question, BandLaw law, ColumnQuestion.Elution elution) {
        return on(bed, question, law, elution, mostAtOnce(question, bed));
    }

    /** All of the sample, as far as the bed ever carries it [mg]. */
    private static double mostAtOnce(ColumnQuestion question, Bed bed) {
        return Math.min(BedLoad.mostMg(bed, Double.POSITIVE_INFINITY), question.massMg());
    }

    /** With so much of the sample at once [mg]. */
    private static ChosenProgram on(
            Bed bed, ColumnQuestion question, BandLaw law, ColumnQuestion.Elution elution, double massMg) {
        int target = question.sample().spots().indexOf(question.target());
        TrialColumn full = new TrialColumn(
                law, bed, loadMl(question, law, bed, massMg), target, question.fractionMl(), TrialColumn.Order.SHOWN);
        ProgramSearch first = new ProgramSearch(full);
        List<WeighedProgram> singles = first.isocratic();
        List<Integer> unshown =
                full.unshown(singles.stream().map(WeighedProgram::program).toList(), first.percents());
        TrialColumn column = unshown.isEmpty() ? full : full.unshown();
        ProgramSearch search = unshown.isEmpty() ? first : new ProgramSearch(column);
        List<WeighedProgram> isocratic = unshown.isEmpty() ? singles : search.isocratic();
        List<WeighedProgram> steps = new ArrayList<>();
        WeighedProgram program = question.program()
                .map(own -> column.weigh(own))
                .orElseGet(() -> unshown.isEmpty()
                        ? sought(elution, search, isocratic, steps)
                        : search.rule().nearestToPlates(isocratic));
        double seen = column.gap(program.program());
        // where nothing shows how far the spots lie apart, a larger bed would only cost solvent
        double gap = unshown.isEmpty() ? seen : Math.max(seen, BedLoad.NARROW);
        return new ChosenProgram(
                question,
                column,
                program,
                column.bands(program.program()),
                isocratic,
                steps,
                gap,
                BedLoad.mostMg(bed, gap),
                unshown);
    }

    /** As few eluents as do it; those of several that were weighed are added to a list. */
    private static WeighedProgram sought(
            ColumnQuestion.Elution elution,
            ProgramSearch search,
            List<WeighedProgram> isocratic,
            List<WeighedProgram> steps) {
        ProgramRule rule = search.rule();
        WeighedProgram one = rule.choose(isocratic);
        if (elution == ColumnQuestion.Elution.ISOCRATIC) {
            return one;
        }
        boolean asked = elution == ColumnQuestion.Elution.STEPS;
        if (!asked && rule.isGoodEnough(one)) {
            return one;
        }
        List<WeighedProgram> twos = search.twoSteps();
        if (twos.isEmpty()) {
            return one;
        }
        WeighedProgram two = twos.get(0);
        steps.add(two);
        if (!asked && !rule.isWorth(two, one)) {
            return one;
        }
        List<WeighedProgram> threes = search.threeSteps(two);
        if (!threes.isEmpty()) {
            steps.add(threes.get(0));
            return rule.isWorth(threes.get(0), two) ? threes.get(0) : two;
        }
        return two;
    }

    /** What {@link ColumnChoice#loadMl(ColumnQuestion, BandLaw, Bed, double)} gives for all that the bed ever carries [ml]. */
    static double loadMl(ColumnQuestion question, BandLaw law, Bed bed) {
        return loadMl(question, law, bed, mostAtOnce(question, bed));
    }

    /**
     * Volume in which a part of the sample [mg] is put on [ml]: of a volume that was said, as large a part; of a dry load the void of
     * its silica.
     */
    private static double loadMl(ColumnQuestion question, BandLaw law, Bed bed, double massMg) {
        if (question.loading() == Loading.DRY) {
            return BedHabits.dryMl(massMg);
        }
        return question.loadMl().isPresent()
                ? question.loadMl().getAsDouble() * massMg / question.massMg()
                : BedHabits.wetMl(massMg, law.voidMl(bed));
    }
}
