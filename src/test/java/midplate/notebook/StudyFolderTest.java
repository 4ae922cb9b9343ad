package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import midplate.notebook.Study.Keeping;
import midplate.notebook.StudySearch.Which;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder as its users see it; all studies are invented. */
class StudyFolderTest {
    private static final String A = "20261126-aaaaaaaaaa";
    private static final String B = "20261126-bbbbbbbbbb";
    private static final Instant NOON = Instant.parse("2026-11-26T12:00:00Z");

    @TempDir
    private Path place;

    private StudyFolder folder;

    private static Clock at(Instant time) {
        return Clock.fixed(time, ZoneOffset.UTC);
    }

    @BeforeEach
    void open() {
        folder = StudyFolder.open(place.resolve("data"), new SmallFormat(), at(NOON));
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private void openAgain(Instant time) {
        folder.close();
        folder = StudyFolder.open(place.resolve("data"), new SmallFormat(), at(time));
    }

    private byte[] file(String room, String id) throws IOException {
        return Files.readAllBytes(folder.path().resolve(room).resolve(id + ".json"));
    }

    @Test
    void aStudyKeptIsReadAgainByAnotherStart() {
        KeptStudy kept = folder.create(SmallFormat.study(A, "Ketones", "first", "A", "B"));
        openAgain(NOON.plusSeconds(60));
        assertEquals(kept, folder.read(new StudyId(A)));
        assertEquals(NOON, kept.study().created());
        assertEquals(List.of(), kept.notices());
    }

    @Test
    void theVersionBeforeStaysBesideTheNewOne() throws IOException {
        KeptStudy first = folder.create(SmallFormat.study(A, "", "first"));
        byte[] before = file("studies", A);
        KeptStudy second = folder.replace(SmallFormat.study(A, "", "second"), first.tag());
        assertEquals(
                new String(before, StandardCharsets.UTF_8), new String(file("earlier", A), StandardCharsets.UTF_8));
        assertEquals("second", folder.read(new StudyId(A)).study().notes());
        assertEquals(second, folder.read(new StudyId(A)));
    }

    @Test
    void aSaveOverAnotherStateThanExpectedIsRefusedAndTellsWhatIsThere() {
        KeptStudy first = folder.create(SmallFormat.study(A, "", "first"));
        KeptStudy second = folder.replace(SmallFormat.study(A, "", "second"), first.tag());
        StudyConflict conflict =
                assertThrows(StudyConflict.class, () -> folder.replace(SmallFormat.study(A, "", "mine"), first.tag()));
        assertEquals(second, conflict.now());
        assertEquals(second, folder.read(new StudyId(A)));
        assertEquals(
                second,
                assertThrows(StudyConflict.class, () -> folder.create(SmallFormat.study(A, "", "new")))
                        .now());
        assertThrows(NoSuchStudy.class, () -> folder.replace(SmallFormat.study(B, "", ""), first.tag()));
        assertThrows(NoSuchStudy.class, () -> folder.read(new StudyId(B)));
    }

    @Test
    void ofManySavesOfOneStateAtOnceOneSucceeds() throws Exception {
        KeptStudy first = folder.create(SmallFormat.study(A, "", "first"));
        ExecutorService threads = Executors.newFixedThreadPool(8);
        List<Callable<Boolean>> saves = IntStream.range(0, 24)
                .<Callable<Boolean>>mapToObj(i -> () -> {
                    try {
                        folder.replace(SmallFormat.study(A, "", "by " + i), first.tag());
                        return true;
                    } catch (StudyConflict e) {
                        return false;
                    }
                })
                .toList();
        int done = 0;
        for (Future<Boolean> save : threads.invokeAll(saves)) {
            done += save.get() ? 1 : 0;
        }
        threads.shutdown();
        assertEquals(1, done);
    }

    @Test
    void aClockSetBackMakesNoStudyOlderThanItWas() {
        KeptStudy first = folder.create(SmallFormat.study(A, "", "first"));
        openAgain(NOON.minusSeconds(86_400));
        KeptStudy second = folder.replace(SmallFormat.study(A, "", "second"), first.tag());
        assertEquals(NOON, second.study().modified());
        assertEquals(NOON, second.study().created());
        assertFalse(first.tag().equals(second.tag()));
        openAgain(NOON.plusSeconds(5));
        KeptStudy third = folder.replace(SmallFormat.study(A, "", "third"), second.tag());
        assertEquals(NOON.plusSeconds(5), third.study().modified());
        assertEquals(NOON, third.study().created());
    }

    @Test
    void theListIsFoundByWordsOfTitleNotesAndSpotsNewestFirst() {
        folder.create(SmallFormat.study(A, "Käse und Ester", "dried over MgSO4", "Menthol"));
        openAgain(NOON.plusSeconds(1));
        folder.create(SmallFormat.study(B, "Ketones", "", "A"));
        assertEquals(List.of(B, A), ids(new StudySearch("", Which.ALL, 0, 50)));
        assertEquals(List.of(A), ids(new StudySearch("", Which.ALL, 1, 50)));
        assertEquals(List.of(A), ids(new StudySearch("KASE menth", Which.AT_HAND, 0, 50)));
        assertEquals(List.of(A), ids(new StudySearch(" mgso4 ", Which.ALL, 0, 50)));
        assertEquals(List.of(), ids(new StudySearch("menthol ketones", Which.ALL, 0, 50)));
        assertEquals(List.of(), ids(new StudySearch("", Which.ARCHIVED, 0, 50)));
        StudyList part = folder.list(new StudySearch("", Which.ALL, 0, 1));
        assertEquals(2, part.total());
        assertEquals(List.of("A"), part.studies().get(0).spots());
        assertEquals(List.of(), part.troubles());
    }

    private List<String> ids(StudySearch search) {
        return folder.list(search).studies().stream()
                .map(study -> study.id().value())
                .toList();
    }

    @Test
    void nothingIsDoneOnceTheFolderIsClosed() {
        folder.close();
        assertEquals(
                FolderFault.Kind.CLOSED,
                assertThrows(FolderFault.class, () -> folder.list(StudySearch.everything()))
                        .kind());
        assertEquals(
                FolderFault.Kind.CLOSED,
                assertThrows(FolderFault.class, () -> folder.create(SmallFormat.study(A, "", "")))
                        .kind());
        assertTrue(Files.exists(folder.path().resolve("midplate.lock")));
    }

    @Test
    void putAwayIsOutOfTheListAndComesBack() {
        KeptStudy first = folder.create(SmallFormat.study(A, "", "first"));
        assertThrows(
                StudyConflict.class, () -> folder.keep(new StudyId(A), new StudyTag("0".repeat(32)), Keeping.ARCHIVED));
        assertEquals(
                Keeping.ARCHIVED,
                folder.keep(new StudyId(A), first.tag(), Keeping.ARCHIVED)
                        .study()
                        .keeping());
        assertEquals(List.of(), ids(new StudySearch("", Which.AT_HAND, 0, 50)));
        assertEquals(List.of(A), ids(new StudySearch("", Which.ARCHIVED, 0, 50)));
        KeptStudy put = folder.read(new StudyId(A));
        folder.replace(put.study().keeping(Keeping.AT_HAND), put.tag());
        assertEquals(List.of(A), ids(new StudySearch("", Which.AT_HAND, 0, 50)));
    }
}
