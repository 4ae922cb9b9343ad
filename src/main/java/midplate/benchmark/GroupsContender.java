package midplate.benchmark;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.advice.Advice;
import midplate.advice.Adviser;
import midplate.advice.Question;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.inference.GroupCounter;
import midplate.inference.PairName;
import midplate.inference.StructureForecast;
import midplate.plate.Setting;

/** The program itself, told the structures as a user tells them. */
final class GroupsContender implements StructureContender {
    private final SolventCatalogue catalogue;
    private final Adviser adviser;
    private final GroupCounter counter;
    private final PlateQuestions questions;
    private final Structures told;

    /** Whether the program is told the structures. */
    enum Structures {
        TOLD,
        NOT_TOLD
    }

    GroupsContender(SolventCatalogue catalogue, MeasuredPairs fitted, GroupCounter counter, Structures told) {
        this.told = told;
        this.catalogue = catalogue;
        this.adviser = Adviser.of(catalogue, fitted);
        this.counter = counter;
        this.questions = new PlateQuestions(catalogue);
    }

    @Override
    public Choice first(List<ToldSpot> spots) {
        return chosen(spots);
    }

    @Override
    public Optional<Choice> choose(List<ToldSpot> spots) {
        return Optional.of(chosen(spots));
    }

    private Choice chosen(List<ToldSpot> spots) {
        Advice advice = adviser.advise(question(PairName.HEXANE_ETHYL_ACETATE, spots));
        return new Choice(advice.ratio().percentStrong(), advice.forecast().chance());
    }

    @Override
    public Optional<List<Guess>> guesses(PairName pair, ToldSpot spot, double[] percents) {
        return Optional.of(
                adviser
                        .predict(
                                question(pair, List.of(spot)),
                                Arrays.stream(percents).boxed().toList())
                        .stream()
                        .map(forecast -> forecast.spots().get(0))
                        .map(each -> new Guess(each.rf(), each.low(), each.high()))
                        .toList());
    }

    @Override
    public boolean isRare(PairName pair, String smiles) {
        return adviser.forecast(
                        Sorbent.SILICA,
                        catalogue.solvent(pair.weak()),
                        catalogue.solvent(pair.strong()),
                        counter.of(smiles))
                .map(StructureForecast::rare)
                .filter(rare -> !rare.isEmpty())
                .isPresent();
    }

    private Question question(PairName pair, List<ToldSpot> spots) {
        Map<String, GroupCounts> structures = new HashMap<>();
        for (int i = 0; told == Structures.TOLD && i < spots.size(); i++) {
            structures.put(PlateQuestions.name(i), counter.of(spots.get(i).smiles()));
        }
        return questions
                .of(pair, spots.stream().map(ToldSpot::trials).toList(), List.of(), Setting.AUTOMATED)
                .knowing(structures);
    }
}
