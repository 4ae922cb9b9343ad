package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import midplate.notebook.StudyFolder;
import midplate.wire.StudyFiles;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the terminal says of the folder at the start. */
class FolderNewsTest {
    @TempDir
    private Path place;

    private List<String> news() {
        try (StudyFolder folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC())) {
            return FolderNews.of(folder).stream().map(Texts.english()::render).toList();
        }
    }

    /** The folder looks at itself once after it was opened, whenever its thread comes to it, and then makes what is missing. */
    private static void putFileInPlaceOf(Path room) throws IOException {
        Files.delete(room);
        try {
            Files.writeString(room, "invented");
        } catch (IOException made) {
            Files.delete(room);
            Files.writeString(room, "invented");
        }
    }

    @Test
    void isNothingWhereAllIsWell() {
        assertEquals(List.of(), news());
    }

    @Test
    void namesFilesThatAreNoStudiesAtHandAndCountsTheRest() throws IOException {
        assertEquals(List.of(), news());
        for (int i = 0; i < 12; i++) {
            Files.writeString(place.resolve("studies").resolve("invented" + i + ".json"), "{}");
        }
        List<String> news = news();
        assertEquals(11, news.size());
        assertTrue(news.get(0).startsWith("studies/invented0.json is not named like a study"), news.get(0));
        assertTrue(news.get(10).startsWith("2 more such files"), news.get(10));
    }

    @Test
    void isThatOfTheFolderWhereTheFolderItselfIsAtFaultAndNothingWhereTheProgramEnds() throws IOException {
        StudyFolder closed = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        closed.close();
        assertEquals(List.of(), FolderNews.of(closed));
        Path other = Files.createDirectory(place.resolve("other"));
        try (StudyFolder folder = StudyFolder.open(other, StudyFiles.builtIn(), Clock.systemUTC())) {
            assertEquals(List.of(), FolderNews.of(folder));
            putFileInPlaceOf(other.resolve("studies"));
            assertEquals(
                    "folder.is-file",
                    FolderNews.of(folder).stream().map(Message::key).findFirst().orElse(""));
        }
    }
}
