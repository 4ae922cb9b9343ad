package midplate.terminal;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import midplate.advice.Question;
import midplate.catalogue.Caution;
import midplate.catalogue.Hazard;
import midplate.catalogue.SolventCatalogue;
import midplate.wire.Exchange;
import midplate.words.Message;

/** What to mind before the two solvents of a question are poured. */
final class SpokenCautions {
    /** Of the cautions for every solvent, those for filling a jar. */
    private static final List<String> AT_THE_JAR = List.of("sheet-first", "hood", "vapours");

    private final Exchange exchange;
    private final SolventCatalogue catalogue;
    private final Question question;

    SpokenCautions(Exchange exchange, Question question) {
        this.exchange = exchange;
        this.catalogue = exchange.catalogue();
        this.question = question;
    }

    /** One sentence each: the cautions, then the hazard statements of the solvents by their codes. */
    Stream<String> lines() {
        return Stream.concat(cautions(), hazards());
    }

    private Stream<String> cautions() {
        return Stream.of(
                        catalogue.generalCautions().stream().filter(caution -> AT_THE_JAR.contains(caution.key())),
                        catalogue.cautions(question.weak()).stream(),
                        catalogue.cautions(question.strong()).stream())
                .flatMap(list -> list)
                .map(Caution::text)
                .distinct();
    }

    private Stream<String> hazards() {
        return Stream.of(question.weak(), question.strong())
                .map(solvent -> Message.of(
                        "terminal.hazards",
                        "solvent",
                        solvent.name(),
                        "codes",
                        catalogue.hazards(solvent).stream()
                                .map(Hazard::code)
                                .distinct()
                                .collect(Collectors.joining(", "))))
                .map(exchange.texts()::render);
    }
}
