package midplate.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.notebook.Study.Keeping;
import midplate.notebook.Study.Origin;
import midplate.words.Message;

/** A form of file for tests of the folder alone: it carries a few fields of a study, and is strict about them. */
final class SmallFormat implements StudyFormat {
    private static final int VERSION = 2;
    private final ObjectMapper json = new ObjectMapper();

    @Override
    public Study read(byte[] file) throws UnreadableStudy {
        try {
            JsonNode read = json.readTree(file);
            if (read == null || !"midplate-study".equals(read.path("format").asText())) {
                throw damaged("no study");
            }
            if (read.path("version").asInt() > VERSION) {
                throw new UnreadableStudy(
                        UnreadableStudy.Kind.NEWER, Message.of("allowed.words", "words", "a newer version"));
            }
            if (read.size() != 9) {
                throw damaged("fields");
            }
            List<StudySpot> spots = new ArrayList<>();
            for (JsonNode name : read.get("spots")) {
                spots.add(new StudySpot("s" + (spots.size() + 1), text(name), Optional.empty()));
            }
            return study(text(read.get("id")), text(read.get("title")), spots, text(read.get("notes")))
                    .at(Instant.parse(text(read.get("created"))), Instant.parse(text(read.get("modified"))))
                    .keeping(Keeping.valueOf(text(read.get("keeping"))));
        } catch (IOException | RuntimeException e) {
            throw damaged(String.valueOf(e.getMessage()));
        }
    }

    private static String text(JsonNode node) {
        if (!node.isTextual()) {
            throw new IllegalArgumentException("no text");
        }
        return node.textValue();
    }

    private static UnreadableStudy damaged(String why) {
        return new UnreadableStudy(UnreadableStudy.Kind.DAMAGED, Message.of("allowed.words", "words", why));
    }

    @Override
    public byte[] write(Study study) {
        ObjectNode object = json.createObjectNode();
        object.put("format", "midplate-study").put("version", VERSION);
        object.put("id", study.id().value()).put("title", study.title());
        object.put("created", study.created().toString())
                .put("modified", study.modified().toString());
        ArrayNode spots = object.putArray("spots");
        study.spots().forEach(spot -> spots.add(spot.name()));
        object.put("keeping", study.keeping().name()).put("notes", study.notes());
        try {
            return json.writerWithDefaultPrettyPrinter().writeValueAsBytes(object);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An invented study. */
    static Study study(String id, String title, String notes, String... spots) {
        List<StudySpot> named = new ArrayList<>();
        for (String name : spots) {
            named.add(new StudySpot("s" + (named.size() + 1), name, Optional.empty()));
        }
        return study(id, title, named, notes);
    }

    private static Study study(String id, String title, List<StudySpot> spots, String notes) {
        return new Study(
                new StudyId(id),
                title,
                Instant.EPOCH,
                Instant.EPOCH,
                Keeping.AT_HAND,
                Origin.OWN,
                "silica",
                "bench",
                List.of("hexane", "ethyl-acetate"),
                spots,
                List.of(),
                new NextJar(
                        "hexane",
                        "ethyl-acetate",
                        JarAdditive.NONE,
                        Entered.number("0.2", 0.2),
                        Entered.number("0.8", 0.8),
                        "usual",
                        List.of(),
                        new Entered("10", OptionalDouble.of(10)),
                        new Entered("50", OptionalDouble.of(50))),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                notes);
    }
}
