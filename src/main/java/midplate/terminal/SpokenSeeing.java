package midplate.terminal;

import java.io.PrintWriter;
import java.util.List;
import midplate.identity.SeeingAnswer;
import midplate.identity.Sight;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Texts;

/** How to see compounds, in words. */
final class SpokenSeeing {
    private final Texts texts;

    SpokenSeeing(Texts texts) {
        this.texts = texts;
    }

    /** The order, then each way, then what to mind. */
    void print(SeeingAnswer answer, PrintWriter out) {
        Paragraph.of(texts.render(answer.order())).print(out);
        answer.ways().forEach(way -> print(way, out));
        Paragraph.section(
                out,
                said("terminal.cautions-seeing"),
                answer.cautions().stream().map(texts::render));
    }

    private void print(SeeingAnswer.Way way, PrintWriter out) {
        out.println();
        Paragraph.of(texts.render(Message.of(
                        "terminal.way",
                        "way",
                        way.way().said(),
                        "leaves",
                        switch (way.way().leaves()) {
                            case UNCHANGED -> Message.of("terminal.way-unchanged");
                            case REVERSIBLE -> Message.of("terminal.way-reversible");
                            case DESTROYED -> Message.of("terminal.way-destroyed");
                        })))
                .print(out);
        sight(way, Sight.SHOWS, "terminal.way-shows", out);
        sight(way, Sight.MAY_SHOW, "terminal.way-may-show", out);
        sight(way, Sight.NOT_KNOWN, "terminal.way-not-known", out);
        sight(way, Sight.BLIND, "terminal.way-blind", out);
        Paragraph.item(way.way().how()).print(out);
        Paragraph.item(texts.render(Message.of(
                        "terminal.way-negative", "negative", way.way().negative())))
                .print(out);
    }

    private void sight(SeeingAnswer.Way way, Sight sight, String key, PrintWriter out) {
        List<String> names = way.answers().stream()
                .filter(seen -> seen.sight() == sight)
                .map(SeeingAnswer.Seen::name)
                .toList();
        if (!names.isEmpty()) {
            Paragraph.item(texts.render(Message.of(key, "names", Allowed.words(names))))
                    .print(out);
        }
    }

    private String said(String key) {
        return texts.render(Message.of(key));
    }
}
