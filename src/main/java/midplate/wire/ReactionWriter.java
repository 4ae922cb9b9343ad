package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalInt;
import midplate.identity.ReactionAnswer;
import midplate.identity.ReactionPlate;
import midplate.identity.ReactionQuestion;
import midplate.identity.ReactionSpecies;
import midplate.words.Texts;

/** Writes how far a reaction has come. */
final class ReactionWriter {
    /** Decimals of a chance and of a distance in Rf. */
    private static final int DECIMALS = 4;
    /** Decimals of a time of a curve [min] and of a grade. */
    private static final int COARSE = 2;

    private final Texts texts;

    ReactionWriter(Texts texts) {
        this.texts = texts;
    }

    /** The whole answer. */
    String write(ReactionQuestion question, ReactionAnswer found) {
        ObjectNode answer = JsonWriting.object().put("state", found.state().id());
        answer.set("inWords", JsonWriting.message(found.inWords(), texts));
        answer.set("reasons", JsonWriting.messages(found.reasons(), texts));
        ObjectNode chances = answer.putObject("chances");
        found.chances().forEach((state, chance) -> chances.set(state.id(), JsonWriting.number(chance, DECIMALS)));
        found.lookAgain().ifPresent(look -> {
            ObjectNode node = answer.putObject("lookAgain");
            node.set("afterMinutes", JsonWriting.exact(look.afterMinutes()));
            node.set("atMinutes", JsonWriting.exact(look.atMinutes()));
            node.set("text", JsonWriting.message(look.text(), texts));
        });
        answer.set("curve", curve(question, found));
        found.apart().ifPresent(apart -> {
            ObjectNode node = answer.putObject("apart");
            apart.gapRf().ifPresent(gap -> node.set("gapRf", JsonWriting.number(gap, DECIMALS)));
            node.set("text", JsonWriting.message(apart.text(), texts));
        });
        answer.set("next", new NextEluentWriter(texts).write(found.next()));
        answer.set("practice", JsonWriting.messages(found.practice(), texts));
        answer.set("warnings", JsonWriting.messages(found.warnings(), texts));
        answer.set("cautions", JsonWriting.messages(found.cautions(), texts));
        return JsonWriting.text(answer);
    }

    /** The grades that were said, and those to expect where that was worked out. */
    private static ObjectNode curve(ReactionQuestion question, ReactionAnswer found) {
        ObjectNode curve = JsonWriting.object();
        ArrayNode minutes = curve.putArray("minutes");
        question.plates().forEach(plate -> minutes.add(JsonWriting.exact(plate.minutes())));
        ObjectNode all = curve.putObject("species");
        for (ReactionSpecies species : question.species()) {
            ObjectNode node = all.putObject(species.name());
            ArrayNode grades = node.putArray("grade");
            for (ReactionPlate plate : question.plates()) {
                add(grades, plate.grade(species.name()));
            }
            ReactionAnswer.Course course = found.courses().get(species.name());
            if (course != null) {
                ObjectNode expected = node.putObject("expected");
                expected.set("minutes", JsonWriting.numbers(course.minutes(), COARSE));
                expected.set("value", JsonWriting.numbers(course.value(), COARSE));
                expected.set("low", JsonWriting.numbers(course.low(), COARSE));
                expected.set("high", JsonWriting.numbers(course.high(), COARSE));
            }
        }
        ArrayNode baseline = curve.putArray("baseline");
        question.plates().forEach(plate -> add(baseline, plate.baseline()));
        return curve;
    }

    private static void add(ArrayNode grades, OptionalInt grade) {
        if (grade.isPresent()) {
            grades.add(grade.getAsInt());
        } else {
            grades.addNull();
        }
    }
}
