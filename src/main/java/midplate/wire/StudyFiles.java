package midplate.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.Study;
import midplate.notebook.StudyFormat;
import midplate.notebook.UnreadableStudy;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;

/** The form of the files that studies are kept in: JSON that a person can read, of every version there has been. */
public final class StudyFiles implements StudyFormat {
    /** Laid out for a person a study takes more room than as it is sent [bytes]. */
    static final int MOST_BYTES = 16 * 1024 * 1024;

    private static final byte[] MARK = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};
    private static final JsonFactory FACTORY = new JsonFactory();

    private final SolventCatalogue catalogue;
    private final FunctionalGroups groups;
    /** A reason is told as a message; these only serve faults that nobody is shown. */
    private final Texts texts = Texts.of(Language.ENGLISH);

    private StudyFiles(SolventCatalogue catalogue, FunctionalGroups groups) {
        this.catalogue = catalogue;
        this.groups = groups;
    }

    /** With the solvents and groups packed with the program. */
    public static StudyFiles builtIn() {
        return new StudyFiles(SolventCatalogue.builtIn(), FunctionalGroups.builtIn());
    }

    @Override
    public Study read(byte[] bytes) throws UnreadableStudy {
        byte[] file = withoutMark(bytes);
        FaultList faults = new FaultList(texts);
        try {
            return new StudyReader(catalogue, groups, faults)
                    .read(JsonText.read(JsonText.decoded(file, faults, MOST_BYTES), faults));
        } catch (BadInput bad) {
            Optional<String> newer = newerVersion(file);
            throw newer.isPresent()
                    ? new UnreadableStudy(UnreadableStudy.Kind.NEWER, StudyUpgrades.newer(newer.get()))
                    : new UnreadableStudy(UnreadableStudy.Kind.DAMAGED, plain(faults.first()));
        }
    }

    /** What a parser says of brackets and names helps nobody who opens a study: the line tells where to look. */
    private static Message plain(Message fault) {
        if (!fault.key().equals("fault.at.no-json")) {
            return fault;
        }
        boolean isTorn = String.valueOf(fault.args().get("detail")).contains("end-of-input");
        return Message.of(
                isTorn ? "fault.study-breaks-off" : "fault.study-garbled",
                "line",
                fault.args().getOrDefault("line", 1));
    }

    @Override
    public byte[] write(Study study) {
        return Legible.text(StudyWriter.tree(study)).getBytes(StandardCharsets.UTF_8);
    }

    /** Some editors put a mark before UTF-8 when they save. */
    private static byte[] withoutMark(byte[] file) {
        boolean marked = file.length >= MARK.length && Arrays.equals(MARK, Arrays.copyOf(file, MARK.length));
        return marked ? Arrays.copyOfRange(file, MARK.length, file.length) : file;
    }

    /** A newer form may be larger, deeper or otherwise beyond what is read here: only its first two fields are looked at. */
    private static Optional<String> newerVersion(byte[] file) {
        try (JsonParser parser = FACTORY.createParser(new String(file, StandardCharsets.UTF_8))) {
            boolean ours = parser.nextToken() == JsonToken.START_OBJECT
                    && "format".equals(parser.nextFieldName())
                    && StudyUpgrades.FORMAT.equals(parser.nextTextValue())
                    && "version".equals(parser.nextFieldName())
                    && parser.nextToken() == JsonToken.VALUE_NUMBER_INT;
            String version = ours ? parser.getText() : "0";
            return Double.parseDouble(version) > StudyUpgrades.NEWEST ? Optional.of(version) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // what it is instead is told when it is read in full
        }
    }
}
