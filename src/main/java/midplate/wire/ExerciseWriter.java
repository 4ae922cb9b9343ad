package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import midplate.advice.Ratio;
import midplate.catalogue.FunctionalGroup;
import midplate.chemistry.GroupCounts;
import midplate.lesson.Exercise;
import midplate.lesson.ExerciseCompound;
import midplate.lesson.ExerciseKey;
import midplate.lesson.ExerciseKnowns;
import midplate.lesson.ExerciseLevel;
import midplate.lesson.ExercisePair;
import midplate.lesson.ExercisePlate;
import midplate.lesson.ExerciseProgram;
import midplate.lesson.LessonSample;
import midplate.plate.Limit;
import midplate.words.Allowed;
import midplate.words.Message;

/** Writes exercises, their plates, and what is told of them. */
final class ExerciseWriter {
    private static final int RF_DECIMALS = 2;
    private static final int MM_DECIMALS = 2;
    private static final int SHARE_DECIMALS = 2;

    private final Compounds compounds;
    private final Speech speech;
    private final ExerciseWords words;

    ExerciseWriter(Compounds compounds, Speech speech) {
        this.compounds = compounds;
        this.speech = speech;
        this.words = new ExerciseWords();
    }

    /** The pairs that exercises are made with. */
    static ArrayNode pairs() {
        ArrayNode pairs = JsonWriting.array();
        Arrays.stream(ExercisePair.values())
                .forEach(pair -> pairs.addObject().put("weak", pair.weak()).put("strong", pair.strong()));
        return pairs;
    }

    /** What students are told. */
    String exercise(Exercise exercise, ExerciseKnowns knowns) {
        LessonSample sample = exercise.sample();
        ExerciseLevel level = exercise.code().level();
        ObjectNode answer = JsonWriting.object()
                .put("code", exercise.code().text())
                .put("level", level.id())
                .put("sorbent", sample.sorbent().id());
        answer.set("weak", JsonWriting.solvent(sample.weak(), speech.texts()));
        answer.set("strong", JsonWriting.solvent(sample.strong(), speech.texts()));
        answer.putArray("percentRange")
                .add(JsonWriting.number(exercise.lowestPercent(), SHARE_DECIMALS))
                .add(JsonWriting.number(exercise.highestPercent(), SHARE_DECIMALS));
        answer.put("mostPlates", ExercisePlate.MOST);
        answer.set("told", said(words.told(level)));
        answer.set("goal", said(words.goal(level)));
        ArrayNode unknowns = answer.putArray("unknowns");
        for (int i = 0; i < exercise.names().size(); i++) {
            ObjectNode node = unknowns.addObject().put("name", exercise.names().get(i));
            if (level == ExerciseLevel.GROUPS_TOLD) {
                node.set("groups", said(groups(exercise.compounds().get(i).counts())));
            }
        }
        ObjectNode known = answer.putObject("knowns");
        share(known, knowns.ratio());
        ArrayNode named = known.putArray("compounds");
        knowns.compounds().forEach(each -> named.add(compound(each)));
        answer.set("cautions", JsonWriting.messages(words.cautions(sample), speech.texts()));
        return JsonWriting.text(answer);
    }

    private Message groups(GroupCounts counts) {
        List<Message> groups = compounds.groups().all().stream()
                .filter(group -> Compounds.isClass(group) && counts.of(group.id()) > 0)
                .map(group -> times(group, counts.of(group.id())))
                .toList();
        return groups.isEmpty() ? Message.of("lesson.exercise-no-group") : Allowed.list(groups);
    }

    private static Message times(FunctionalGroup group, int count) {
        Message said = Compounds.said(group.id());
        return count == 1 ? said : Message.of("lesson.exercise-group-times", "count", count, "group", said);
    }

    private ObjectNode compound(ExerciseCompound each) {
        ObjectNode node = JsonWriting.object().put("id", each.compound().id());
        node.set("name", said(each.compound().said()));
        return node;
    }

    private static void share(ObjectNode node, Ratio ratio) {
        node.putObject("ratio").put("weak", ratio.weak()).put("strong", ratio.strong());
        node.set("percentStrong", JsonWriting.number(ratio.percentStrong(), SHARE_DECIMALS));
    }

    /** A plate as it is read. */
    String run(Exercise exercise, ExercisePlate plate) {
        return JsonWriting.text(plate(exercise, plate, JsonWriting.object()));
    }

    private ObjectNode plate(Exercise exercise, ExercisePlate plate, ObjectNode node) {
        node.put("plate", plate.number());
        node.set("percentStrong", JsonWriting.number(plate.percentStrong(), SHARE_DECIMALS));
        node.set("heightMm", JsonWriting.number(ExercisePlate.HEIGHT_MM, MM_DECIMALS));
        node.set("widthMm", JsonWriting.number(ExercisePlate.WIDTH_MM, MM_DECIMALS));
        node.set("startMm", JsonWriting.number(ExercisePlate.START_MM, MM_DECIMALS));
        node.set("frontMm", JsonWriting.number(plate.frontMm(), MM_DECIMALS));
        ArrayNode lanes = node.putArray("lanes");
        for (int i = 0; i < plate.lanes().size(); i++) {
            ObjectNode lane = lanes.addObject();
            if (i < exercise.names().size()) {
                lane.put("name", exercise.names().get(i));
            }
            ArrayNode spots = lane.putArray("spots");
            for (ExercisePlate.Spot spot : plate.lanes().get(i)) {
                ObjectNode each = spots.addObject().put("limit", limit(spot.limit()));
                each.set("mm", JsonWriting.number(spot.mm(), MM_DECIMALS));
                each.set("rf", JsonWriting.number(spot.rf(), RF_DECIMALS));
                each.set("sizeMm", JsonWriting.number(spot.sizeMm(), MM_DECIMALS));
            }
        }
        node.put("done", plate.isDone());
        node.set("text", said(words.read(plate)));
        return node;
    }

    private static String limit(Limit limit) {
        return switch (limit) {
            case NONE -> "none";
            case AT_START -> "start";
            case AT_FRONT -> "front";
        };
    }

    /** So many hints, and how many there are. */
    String hints(List<Message> hints, int count) {
        ObjectNode answer = JsonWriting.object();
        answer.set("hints", JsonWriting.messages(hints.subList(0, count), speech.texts()));
        return JsonWriting.text(answer.put("more", hints.size() - count));
    }

    /** Where spots were expected, beside the model. */
    String placed(ExerciseKnowns knowns, List<Double> placed) {
        ObjectNode answer = JsonWriting.object();
        share(answer, knowns.ratio());
        ArrayNode spots = answer.putArray("spots");
        for (ExerciseKnowns.Placed each : knowns.beside(placed)) {
            ObjectNode node =
                    spots.addObject().put("id", each.compound().compound().id());
            node.set("placed", JsonWriting.number(each.placed(), RF_DECIMALS));
            node.set("rf", JsonWriting.number(each.model().rf(), RF_DECIMALS));
            node.set("low", JsonWriting.number(each.model().low(), RF_DECIMALS));
            node.set("high", JsonWriting.number(each.model().high(), RF_DECIMALS));
            node.set("away", JsonWriting.number(each.away(), RF_DECIMALS));
            node.put("inside", each.inside() == ExerciseKnowns.Inside.YES);
            node.set("text", said(words.beside(each)));
        }
        ArrayNode orders = answer.putArray("orders");
        for (ExerciseKnowns.Order each : knowns.orders(placed)) {
            ObjectNode node = orders.addObject()
                    .put("higher", each.higher().compound().id())
                    .put("lower", each.lower().compound().id())
                    .put("said", ColumnParts.word(each.said()));
            node.set("share", JsonWriting.number(each.share(), RF_DECIMALS));
            node.set("text", said(words.order(each)));
        }
        answer.set("text", said(words.orders(knowns.orders(placed))));
        return JsonWriting.text(answer);
    }

    /** The plates of the program. */
    String program(Exercise exercise, List<ExerciseProgram.Played> played) {
        ObjectNode answer = JsonWriting.object();
        ArrayNode plates = answer.putArray("plates");
        for (ExerciseProgram.Played each : played) {
            ObjectNode node = plates.addObject();
            share(node, each.ratio());
            plate(exercise, each.plate(), node);
        }
        answer.set("text", said(words.program(played)));
        return JsonWriting.text(answer);
    }

    /** What a teacher keeps. */
    String key(Exercise exercise, ExerciseKey key, ExerciseKnowns knowns) {
        ObjectNode answer = JsonWriting.object().put("code", exercise.code().text());
        ArrayNode unknowns = answer.putArray("unknowns");
        List<ExerciseKey.Expected> expected = key.expected();
        for (int i = 0; i < exercise.names().size(); i++) {
            ExerciseCompound compound = exercise.compounds().get(i);
            ObjectNode node = unknowns.addObject().put("name", exercise.names().get(i));
            node.set("compound", compound(compound));
            node.put("smiles", compound.compound().smiles());
            node.put("note", speech.said(compound.compound().note()));
            node.set("mean", JsonWriting.number(expected.get(i).mean(), RF_DECIMALS));
            node.set("deviation", JsonWriting.number(expected.get(i).deviation(), RF_DECIMALS));
        }
        share(answer.putObject("best"), key.best());
        ArrayNode ratios = answer.putArray("ratios");
        for (ExerciseKey.Row row : key.rows()) {
            ObjectNode node = ratios.addObject();
            share(node, row.ratio());
            node.set("rf", JsonWriting.numbers(row.rf(), RF_DECIMALS));
            node.put("serves", row.serves() == ExerciseKey.Serves.YES);
        }
        ArrayNode ranges = answer.putArray("ranges");
        key.ranges().forEach(range -> {
            ObjectNode node = ranges.addObject();
            node.set("from", JsonWriting.number(range.from(), SHARE_DECIMALS));
            node.set("to", JsonWriting.number(range.to(), SHARE_DECIMALS));
        });
        ArrayNode needed = answer.putArray("needed");
        key.needed()
                .forEach(each -> needed.addObject().put("plates", each.plates()).put("times", each.times()));
        ArrayNode known = answer.putArray("knowns");
        for (ExerciseKnowns.Placed each : knowns.beside(List.of(0.0, 0.0, 0.0))) {
            ObjectNode node = compound(each.compound());
            node.set("rf", JsonWriting.number(each.model().rf(), RF_DECIMALS));
            node.set("low", JsonWriting.number(each.model().low(), RF_DECIMALS));
            node.set("high", JsonWriting.number(each.model().high(), RF_DECIMALS));
            known.add(node);
        }
        share(answer.putObject("knownsRun"), knowns.ratio());
        answer.set("texts", JsonWriting.messages(words.key(exercise, key), speech.texts()));
        return JsonWriting.text(answer);
    }

    private ObjectNode said(Message message) {
        return JsonWriting.message(message, speech.texts());
    }
}
