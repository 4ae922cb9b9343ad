package midplate.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.Question;
import midplate.catalogue.EluentRules;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.words.Message;
import midplate.words.Texts;

/** Where a chance comes from, in words: what the setting assumes, what was measured, and the works. */
final class Provenance {
    private static final String LAW = "Snyder1968";

    private final SolventCatalogue catalogue;
    private final List<PlatePair> measured;
    private final Texts texts;

    Provenance(SolventCatalogue catalogue, List<PlatePair> measured, Texts texts) {
        this.catalogue = catalogue;
        this.measured = measured;
        this.texts = texts;
    }

    /** One sentence or work a line. */
    List<String> of(Question question) {
        List<String> lines = new ArrayList<>();
        Optional<PlatePair> measured = pair(question);
        measured.ifPresent(pair -> lines.addAll(measurements(pair)));
        lines.add(texts.render(Message.of("answer.setting-" + question.setting().id())));
        measured.ifPresent(pair -> pair.provenance().sources().forEach(key -> lines.add(work(key))));
        lines.add(work(LAW));
        return lines;
    }

    private Optional<PlatePair> pair(Question question) {
        EluentRules rules = EluentRules.of(catalogue);
        String id =
                PlatePair.id(question.sorbent(), rules.standard(question.weak()), rules.standard(question.strong()));
        return measured.stream().filter(pair -> pair.id().equals(id)).findFirst();
    }

    private List<String> measurements(PlatePair pair) {
        Message measured = Message.of(
                "terminal.measured",
                "series",
                pair.compounds(),
                "readings",
                pair.readings(),
                "weak",
                pair.weak().name(),
                "strong",
                pair.strong().name(),
                "sorbent",
                pair.sorbent().id());
        Message fit = Message.of(
                "terminal.fit",
                "deviation",
                pair.residual(),
                "from",
                pair.trustedFrom(),
                "to",
                pair.trustedTo(),
                "strong",
                pair.strong().name());
        return List.of(texts.render(measured), texts.render(fit));
    }

    private String work(String key) {
        return Optional.ofNullable(catalogue.sources().get(key))
                .map(source -> source.citation() + ".")
                .orElse(key);
    }
}
