package midplate.notebook;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.words.Digits;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;

/** What is said of an advice that no plate ran: whether one ran its ratio, yet with another additive or in another pair. */
final class NearlyRun {
    private static final Texts KNOWN = Texts.of(Language.ENGLISH);

    private final Study study;

    NearlyRun(Study study) {
        this.study = study;
    }

    /** In words; plates on which the advice rested say nothing of it. */
    Message of(GivenAdvice advice) {
        List<Integer> same = IntStream.range(0, study.plates().size())
                .boxed()
                .filter(i -> !advice.after().contains(study.plates().get(i).id())
                        && AdviceOutcomes.isSameRatio(study.plates().get(i), advice))
                .toList();
        Optional<Integer> inPair = same.stream()
                .filter(i -> AdviceOutcomes.isSamePair(study.plates().get(i), advice))
                .findFirst();
        return inPair.map(this::otherAdditive)
                .or(() -> same.stream().findFirst().map(this::otherPair))
                .orElseGet(() -> Message.of("outcome.not-run", "percent", Digits.percent(advice.percentStrong())));
    }

    private Message otherAdditive(int plate) {
        JarAdditive additive = study.plates().get(plate).additive();
        Object words = additive.kind().equals("own")
                ? additive.text().strip()
                : named("page.additive-" + additive.kind(), additive.kind());
        return additive.kind().equals(JarAdditive.NONE.kind()) || words.equals("")
                ? Message.of("outcome.run-without-additive", "plate", plate + 1)
                : Message.of("outcome.run-with-additive", "plate", plate + 1, "additive", words);
    }

    private Message otherPair(int plate) {
        StudyPlate run = study.plates().get(plate);
        return Message.of(
                "outcome.run-in-pair",
                "plate",
                plate + 1,
                "weak",
                named("solvent." + run.weak(), run.weak()),
                "strong",
                named("solvent." + run.strong(), run.strong()));
    }

    private static Object named(String key, String id) {
        return KNOWN.keys().contains(key) ? Message.of(key) : id;
    }
}
