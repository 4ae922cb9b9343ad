package midplate.notebook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.List;
import midplate.notebook.FolderTrouble.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody edits, copies and removes files while the program runs. */
class OutsideChangesTest {
    @TempDir
    private Path place;

    private StudyFolder folder;
    private Path studies;
    private Path file;
    private KeptStudy kept;

    @BeforeEach
    void open() {
        folder = RealStudies.open(place);
        studies = place.resolve("studies");
        file = studies.resolve(RealStudies.A.value() + ".json");
        kept = folder.create(RealStudies.study(RealStudies.A, "Invented", "first", 1));
        assertEquals(List.of("Invented"), titles());
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private List<String> titles() {
        return folder.list(StudySearch.everything()).studies().stream()
                .map(StudySummary::title)
                .toList();
    }

    private List<Kind> troubles() {
        return folder.list(StudySearch.everything()).troubles().stream()
                .map(FolderTrouble::kind)
                .toList();
    }

    @Test
    void anEditedFileIsListedReadWithANoticeAndNotWrittenOverByWhoSawTheOldOne() throws IOException {
        Files.writeString(file, Files.readString(file).replace("\"Invented\"", "\"Edited by hand\""));
        assertEquals(List.of("Edited by hand"), titles());
        KeptStudy edited = folder.read(RealStudies.A);
        assertEquals("study.seal-wrong", edited.notices().get(0).key());
        StudySummary listed = folder.list(StudySearch.everything()).studies().get(0);
        assertEquals(edited.notices(), listed.notices());
        assertEquals(edited.tag(), listed.tag());
        Study mine = RealStudies.study(RealStudies.A, "Mine", "mine", 1);
        assertEquals(
                edited,
                assertThrows(StudyConflict.class, () -> folder.replace(mine, kept.tag()))
                        .now());
        assertEquals("Edited by hand", folder.read(RealStudies.A).study().title());
    }

    @Test
    void anEditThatLeavesSizeAndTimeAsTheyWereIsSeenWhileTheTimeIsTooFreshToTell() throws IOException {
        FileTime time = Files.getLastModifiedTime(file);
        Files.writeString(file, Files.readString(file).replace("\"Invented\"", "\"invented\""));
        Files.setLastModifiedTime(file, time);
        assertEquals(List.of("invented"), titles());
    }

    /** A form in which something happens while it writes: what another program does just then. */
    private record Meanwhile(Runnable happens) implements StudyFormat {
        @Override
        public Study read(byte[] bytes) throws UnreadableStudy {
            return RealStudies.FORMAT.read(bytes);
        }

        @Override
        public byte[] write(Study study) {
            happens.run();
            return RealStudies.FORMAT.write(study);
        }
    }

    @Test
    void whatAnotherProgramPutsThereWhileASaveIsWrittenIsNotWrittenOver() throws IOException {
        byte[] edited = Files.readString(file)
                .replace("\"Invented\"", "\"Edited by hand\"")
                .getBytes(UTF_8);
        byte[] before = Files.readAllBytes(file);
        folder.close();
        folder = StudyFolder.open(place, new Meanwhile(() -> put(edited)), Clock.systemUTC());
        Study mine = RealStudies.study(RealStudies.A, "Mine", "mine", 1);
        StudyConflict conflict = assertThrows(StudyConflict.class, () -> folder.replace(mine, kept.tag()));
        assertEquals("Edited by hand", conflict.now().study().title());
        assertArrayEquals(edited, Files.readAllBytes(file));
        assertArrayEquals(before, Files.readAllBytes(place.resolve("earlier").resolve(file.getFileName())));
        Files.delete(file);
        assertThrows(StudyConflict.class, () -> folder.create(mine), "a new study as well");
        assertArrayEquals(edited, Files.readAllBytes(file));
        assertEquals(List.of(file), RealStudies.files(studies), "nothing half done is left");
    }

    private void put(byte[] content) {
        try {
            Files.write(file, content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aRemovedFileIsRemovedAndACopiedOneIsThere() throws IOException {
        Path away = Files.move(file, place.resolve("away.json"));
        assertEquals(List.of(), titles());
        assertThrows(NoSuchStudy.class, () -> folder.read(RealStudies.A));
        Files.copy(away, file);
        assertEquals(List.of("Invented"), titles());
        assertEquals(kept, folder.read(RealStudies.A));
    }

    @Test
    void aFileOfTheFirstVersionPutThereIsReadWithANoticeAndLeftAsItIsUntilItIsSaved() throws IOException {
        Path first = studies.resolve("20260914-k7m2q9x4tb.json");
        byte[] content = Files.readAllBytes(Path.of("shared", "studies", "version-1.json"));
        Files.write(first, content);
        KeptStudy old = folder.read(new StudyId("20260914-k7m2q9x4tb"));
        assertEquals("study.seal-missing", old.notices().get(0).key());
        assertEquals("2026-09-14T08:12:30Z", old.study().created().toString());
        assertEquals(2, titles().size());
        assertArrayEquals(content, Files.readAllBytes(first));
        KeptStudy saved = folder.replace(old.study(), old.tag());
        assertEquals("study.outside-version-kept", saved.notices().get(0).key());
        assertEquals("2026-09-14T08:12:30Z", saved.study().created().toString());
        assertArrayEquals(
                content,
                Files.readAllBytes(RealStudies.files(place.resolve("set-aside")).get(0)));
        assertEquals(List.of(), troubles());
    }

    @Test
    void filesUnderOtherNamesAreLeftAndToldAndOtherFilesAreNobodysBusiness() throws IOException {
        byte[] content = Files.readAllBytes(file);
        Path copy = Files.write(studies.resolve(RealStudies.A.value() + " (copy).json"), content);
        Path other = Files.write(studies.resolve(RealStudies.B.value() + ".json"), content);
        Files.writeString(studies.resolve("read me.txt"), "invented");
        Files.createDirectory(studies.resolve("old"));
        assertEquals(List.of("Invented"), titles());
        assertEquals(List.of(Kind.MISNAMED, Kind.MISNAMED), troubles());
        assertThrows(FolderFault.class, () -> folder.read(RealStudies.B));
        assertThrows(FolderFault.class, () -> folder.create(RealStudies.study(RealStudies.B, "Invented", "mine", 1)));
        assertArrayEquals(content, Files.readAllBytes(copy));
        assertArrayEquals(content, Files.readAllBytes(other));
    }

    @Test
    void aFileTooLargeForAStudyIsLeftAndTold() throws IOException {
        Path large = studies.resolve(RealStudies.B.value() + ".json");
        Files.write(large, new byte[FileReading.MOST_BYTES + 1]);
        assertEquals(List.of(Kind.TOO_LARGE), troubles());
        assertEquals(FileReading.MOST_BYTES + 1, Files.size(large));
    }

    @Test
    void whatAKilledProcessLeftIsCleanedAtTheNextStartAndNeverTakenForAStudy() throws IOException {
        String part = RealStudies.B.value() + ".json.00000000-0000-0000-0000-000000000000.part";
        Path left = Files.writeString(studies.resolve(part), "{\"format\"");
        Path alike = Files.writeString(studies.resolve("thesis.part"), "invented");
        assertEquals(List.of("Invented"), titles());
        assertEquals(List.of(), troubles());
        folder.close();
        folder = RealStudies.open(place);
        assertTrue(Files.notExists(left));
        assertEquals("invented", Files.readString(alike));
        assertEquals(List.of("Invented"), titles());
    }

    @Test
    void foldersInsideThatWereRemovedAreMadeAgain() throws IOException {
        for (String room : List.of("earlier", "set-aside")) {
            Files.delete(place.resolve(room));
        }
        folder.replace(RealStudies.study(RealStudies.A, "Again", "", 1), kept.tag());
        assertEquals(List.of("Again"), titles());
        assertTrue(Files.isDirectory(place.resolve("set-aside")));
    }

    @Test
    void aDigestThatAnEditorMovedIsNoReasonToCallTheFileDamaged() throws IOException {
        String text = Files.readString(file);
        String digest = text.replaceAll("(?s).*(\"sha256\": \"[0-9a-f]{64}\").*", "$1");
        String moved = text.replaceFirst("\\s*\"sha256\": \"[0-9a-f]{64}\",", "")
                .replaceFirst("\\}\\s*$", ", " + digest + "}");
        Files.writeString(file, moved);
        KeptStudy read = folder.read(RealStudies.A);
        assertEquals(kept.study(), read.study());
        assertEquals("study.seal-missing", read.notices().get(0).key());
    }
}
