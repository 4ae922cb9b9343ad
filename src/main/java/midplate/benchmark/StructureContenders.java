package midplate.benchmark;

import java.util.LinkedHashMap;
import java.util.Map;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Form;
import midplate.inference.GroupCounter;
import midplate.inference.GroupForm;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairCalibration;

/**
 * Who is told structures in the benchmark: the program first, then the program without them, and two peers that learn from the
 * same structures.
 *
 * @param counter finds the groups of a structure
 */
record StructureContenders(GroupCounter counter) {
    /** The program, told the structures. */
    static final String PROGRAM = "Structures told";
    /** The program, not told the structures. */
    static final String WITHOUT = "Not told";
    /** The program with effects of groups by ridge regression. */
    static final String RIDGE = "Ridge on the same counts";
    /** The most similar compound measured. */
    static final String NEIGHBOUR = "Nearest neighbour";

    /** All of them, trained on the same measurements, by their names. */
    Map<String, StructureContender> trainedOn(OpenMeasurements training) {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        MeasuredPairs fitted = fit(training, catalogue, GroupForm.ENERGIES);
        Map<String, StructureContender> all = new LinkedHashMap<>();
        all.put(PROGRAM, told(catalogue, fitted));
        all.put(WITHOUT, new GroupsContender(catalogue, fitted, counter, GroupsContender.Structures.NOT_TOLD));
        MeasuredPairs ridge = fit(training, catalogue, GroupForm.RIDGE);
        all.put(RIDGE, told(catalogue, ridge));
        all.put(NEIGHBOUR, NearestNeighbour.trainedOn(training));
        return all;
    }

    private StructureContender told(SolventCatalogue catalogue, MeasuredPairs fitted) {
        return new GroupsContender(catalogue, fitted, counter, GroupsContender.Structures.TOLD);
    }

    private MeasuredPairs fit(OpenMeasurements training, SolventCatalogue catalogue, GroupForm effects) {
        return PairCalibration.fit(
                training,
                catalogue,
                "benchmark FOLDER",
                Form.THREE_TRAITS,
                FunctionalGroups.builtIn(),
                counter,
                effects);
    }

    /** Asks all of them about a fold. */
    void ask(FoldQuestions fold, Results results) {
        trainedOn(fold.training()).forEach((name, contender) -> ask(fold, contender, results, name));
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        StructureContender stranger =
                told(catalogue, fit(fold.trainingWithoutNeighbours(), catalogue, GroupForm.ENERGIES));
        ask(fold, stranger, results, neighboursLeftOut(PROGRAM));
    }

    private static void ask(FoldQuestions fold, StructureContender contender, Results results, String name) {
        StructureMarks marks = new StructureMarks(contender, results.samples(Results.Part.STRUCTURES, name));
        fold.plates().forEach(marks::mark);
        fold.ratios().forEach(marks::mark);
        fold.wholes().forEach(marks::markFromStructure);
    }

    /** The name of a contender trained without the neighbours of what it is asked about. */
    static String neighboursLeftOut(String name) {
        return name + ", neighbours left out";
    }
}
