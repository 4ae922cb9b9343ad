package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import midplate.notebook.FolderTrouble.Kind;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that broke: nothing wrong is ever shown as if it were right, and nothing saved before is lost. */
class DamagedFilesTest {
    private static final int FLIPS = 400;

    @TempDir
    private Path place;

    private StudyFolder folder;
    private Path file;
    private Path earlier;
    private byte[] first;
    private byte[] second;
    private KeptStudy before;
    private KeptStudy now;

    @BeforeEach
    void twoVersions() throws IOException {
        folder = RealStudies.open(place);
        file = place.resolve("studies").resolve(RealStudies.A.value() + ".json");
        earlier = place.resolve("earlier").resolve(RealStudies.A.value() + ".json");
        before = folder.create(RealStudies.study(RealStudies.A, "Invented", "first", 1));
        first = Files.readAllBytes(file);
        now = folder.replace(RealStudies.study(RealStudies.A, "Invented", "second", 2), before.tag());
        second = Files.readAllBytes(file);
        assertArrayEquals(first, Files.readAllBytes(earlier));
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private void openAgain() {
        folder.close();
        folder = RealStudies.open(place);
    }

    private List<byte[]> setAside() throws IOException {
        List<byte[]> aside = new ArrayList<>();
        for (Path each : RealStudies.files(place.resolve("set-aside"))) {
            aside.add(Files.readAllBytes(each));
        }
        return aside;
    }

    private static List<String> keys(KeptStudy kept) {
        return kept.notices().stream().map(notice -> notice.key()).toList();
    }

    private void assertVersionBefore(byte[] broken) throws IOException {
        KeptStudy kept = folder.read(RealStudies.A);
        assertEquals(before.study(), kept.study());
        assertEquals(List.of("study.version-before-put-back"), keys(kept));
        assertArrayEquals(first, Files.readAllBytes(file));
        assertEquals(1, setAside().size());
        assertArrayEquals(broken, setAside().get(0));
    }

    /** Whatever it broke into. */
    private enum Broken {
        EMPTY,
        ZEROS,
        OTHER_FILE,
        OTHER_JSON,
        HALF_NUMBER
    }

    private byte[] broken(Broken how) {
        return switch (how) {
            case EMPTY -> new byte[0];
            case ZEROS -> new byte[second.length];
            case OTHER_FILE -> new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
            case OTHER_JSON -> "[1, 2, 3]".getBytes(StandardCharsets.UTF_8);
            case HALF_NUMBER -> Arrays.copyOf(second, second.length - 700);
        };
    }

    @ParameterizedTest
    @EnumSource(Broken.class)
    void aBrokenFileIsSetAsideAndTheVersionBeforeTakesItsPlaceAndThatIsToldUntilTheNextSave(Broken how)
            throws IOException {
        RealStudies.putLongAgo(file, broken(how));
        openAgain();
        assertVersionBefore(broken(how));
        openAgain();
        assertVersionBefore(broken(how));
        StudyList list = folder.list(StudySearch.everything());
        assertEquals(1, list.total());
        assertEquals(
                List.of(Kind.SET_ASIDE),
                list.troubles().stream().map(FolderTrouble::kind).toList());
        KeptStudy kept = folder.read(RealStudies.A);
        KeptStudy saved = folder.replace(RealStudies.study(RealStudies.A, "Invented", "third", 2), kept.tag());
        assertEquals(List.of(), saved.notices());
        assertEquals(List.of(), folder.read(RealStudies.A).notices());
        assertEquals(List.of(), folder.list(StudySearch.everything()).troubles());
        assertEquals(1, setAside().size());
    }

    @Test
    void aBrokenFileWithoutAVersionBeforeIsNamedAndTheRestGoesOn() throws IOException {
        folder.create(RealStudies.study(RealStudies.B, "Invented", "alone", 1));
        Path alone = place.resolve("studies").resolve(RealStudies.B.value() + ".json");
        RealStudies.putLongAgo(alone, new byte[100]);
        assertThrows(NoSuchStudy.class, () -> folder.read(RealStudies.B));
        assertFalse(Files.exists(alone));
        openAgain();
        StudyList list = folder.list(StudySearch.everything());
        assertEquals(
                List.of(RealStudies.A),
                list.studies().stream().map(StudySummary::id).toList());
        assertEquals(1, list.troubles().size());
        assertEquals("folder.file-set-aside", list.troubles().get(0).text().key());
        assertTrue(list.troubles().get(0).file().startsWith("set-aside/" + RealStudies.B.value()));
        assertEquals(1, setAside().size());
        assertArrayEquals(new byte[100], setAside().get(0));
    }

    @Test
    void whereBothVersionsBrokeNeitherIsThrownAway() throws IOException {
        RealStudies.putLongAgo(file, new byte[10]);
        RealStudies.putLongAgo(earlier, new byte[20]);
        assertThrows(NoSuchStudy.class, () -> folder.read(RealStudies.A));
        assertArrayEquals(new byte[10], setAside().get(0));
        assertArrayEquals(new byte[20], Files.readAllBytes(earlier));
    }

    @Test
    void cutOffAtEachTwentiethOfItsLengthTheVersionBeforeIsThere() throws IOException {
        for (int twentieth = 0; twentieth < 20; twentieth++) {
            byte[] cut = Arrays.copyOf(second, second.length * twentieth / 20);
            RealStudies.putLongAgo(file, cut);
            assertVersionBefore(cut);
            removeSetAside();
        }
    }

    private void removeSetAside() throws IOException {
        for (Path each : RealStudies.files(place.resolve("set-aside"))) {
            Files.delete(each);
        }
    }

    @Test
    void noFlippedBitIsShownAsIfItWereRightAndNoneCostsTheVersionBefore() throws IOException {
        long seed = Long.getLong("midplate.seed", System.nanoTime());
        Random random = new Random(seed);
        int[] outcomes = new int[4];
        for (int i = 0; i < FLIPS; i++) {
            byte[] flipped = second.clone();
            int bit = random.nextInt(flipped.length * 8);
            flipped[bit / 8] ^= (byte) (1 << bit % 8);
            RealStudies.putLongAgo(file, flipped);
            String told = "bit " + bit + ", seed " + seed;
            outcomes[outcome(flipped, told)]++;
            assertArrayEquals(first, Files.readAllBytes(earlier), told);
            boolean still = Arrays.equals(flipped, Files.readAllBytes(file))
                    || setAside().stream().anyMatch(aside -> Arrays.equals(flipped, aside));
            assertTrue(still, told);
            removeSetAside();
        }
        assertTrue(outcomes[0] > 0 && outcomes[1] > 0, Arrays.toString(outcomes) + " seed " + seed);
    }

    /** 0: it reads, and a notice says that it does not fit; 1: set aside, the version before is there; 2: left and told. */
    private int outcome(byte[] flipped, String told) throws IOException {
        try {
            KeptStudy kept = folder.read(RealStudies.A);
            assertEquals(1, kept.notices().size(), told);
            if (keys(kept).get(0).equals("study.version-before-put-back")) {
                assertEquals(before.study(), kept.study(), told);
                return 1;
            }
            assertTrue(keys(kept).get(0).startsWith("study.seal-"), told);
            assertArrayEquals(flipped, Files.readAllBytes(file), told);
            return 0;
        } catch (FolderFault fault) {
            assertArrayEquals(flipped, Files.readAllBytes(file), told);
            assertTrue(
                    fault.kind() == FolderFault.Kind.NEWER || fault.kind() == FolderFault.Kind.UNREADABLE,
                    told + fault);
            return 2;
        }
    }

    @Test
    void aFileThatDoesNotFitItsDigestNeverBecomesTheVersionBefore() throws IOException {
        String edited = Files.readString(file).replace("second", "secund");
        Files.writeString(file, edited);
        KeptStudy kept = folder.read(RealStudies.A);
        assertEquals("secund", kept.study().notes());
        assertEquals(List.of("study.seal-wrong"), keys(kept));
        assertThrows(
                StudyConflict.class,
                () -> folder.replace(RealStudies.study(RealStudies.A, "Invented", "mine", 1), now.tag()));
        KeptStudy saved = folder.replace(RealStudies.study(RealStudies.A, "Invented", "third", 1), kept.tag());
        assertEquals(List.of("study.outside-version-kept"), keys(saved));
        assertArrayEquals(first, Files.readAllBytes(earlier));
        assertEquals(edited, new String(setAside().get(0), StandardCharsets.UTF_8));
        assertEquals(List.of(), folder.list(StudySearch.everything()).troubles());
        assertEquals(List.of(), folder.read(RealStudies.A).notices());
    }

    @Test
    void aFileOfANewerProgramIsLeftByteForByteAndSaidSo() throws IOException {
        byte[] newer = Files.readString(file)
                .replace("\"version\": 5", "\"version\": 6, \"unheardOf\": {}")
                .getBytes(StandardCharsets.UTF_8);
        RealStudies.putLongAgo(file, newer);
        openAgain();
        Study mine = RealStudies.study(RealStudies.A, "Invented", "mine", 1);
        for (Runnable asked : List.<Runnable>of(
                () -> folder.read(RealStudies.A),
                () -> folder.create(mine),
                () -> folder.replace(mine, now.tag()),
                () -> folder.keep(RealStudies.A, StudyTag.of(newer), Study.Keeping.ARCHIVED))) {
            assertEquals(
                    FolderFault.Kind.NEWER,
                    assertThrows(FolderFault.class, asked::run).kind());
        }
        StudyList list = folder.list(StudySearch.everything());
        assertEquals(0, list.total());
        assertEquals(
                List.of(Kind.NEWER),
                list.troubles().stream().map(FolderTrouble::kind).toList());
        assertArrayEquals(newer, Files.readAllBytes(file));
        assertArrayEquals(first, Files.readAllBytes(earlier));
        assertEquals(List.of(), setAside());
    }

    @Test
    void aFileThatIsAsAMidplateWroteItIsNotCalledDamaged() throws IOException {
        byte[] strange = FileSeal.sealed(
                "{\"format\": \"midplate-study\", \"version\": 5, \"strange\": 1}".getBytes(StandardCharsets.UTF_8));
        RealStudies.putLongAgo(file, strange);
        assertEquals(
                FolderFault.Kind.UNREADABLE,
                assertThrows(FolderFault.class, () -> folder.read(RealStudies.A))
                        .kind());
        assertArrayEquals(strange, Files.readAllBytes(file));
        assertEquals(List.of(), setAside());
    }

    @Test
    void aFileThatIsStillBeingCopiedHereIsWaitedFor() throws IOException {
        Files.write(file, Arrays.copyOf(second, second.length / 2));
        CompletableFuture<Void> rest = CompletableFuture.runAsync(() -> {
            try {
                Thread.sleep(500);
                Files.write(file, second);
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        assertEquals(now, folder.read(RealStudies.A));
        rest.join();
        assertEquals(List.of(), setAside());
    }

    @Test
    void aChangedVersionNumberIsDamageWhereTheVersionBeforeIsGood() throws IOException {
        byte[] flipped = new String(second, StandardCharsets.ISO_8859_1)
                .replaceFirst("\"version\": 5", "\"version\": 6")
                .getBytes(StandardCharsets.ISO_8859_1);
        assertFalse(Arrays.equals(second, flipped));
        RealStudies.putLongAgo(file, flipped);
        assertVersionBefore(flipped);
        Files.delete(earlier);
        RealStudies.putLongAgo(file, flipped);
        FolderFault fault = assertThrows(FolderFault.class, () -> folder.read(RealStudies.A));
        assertEquals(FolderFault.Kind.NEWER, fault.kind(), "without a version before it stays where it is");
        assertArrayEquals(flipped, Files.readAllBytes(file));
    }

    @Test
    void aTornStudyIsNamedByItsTitleAndByTheLineWhereItBreaksOff() throws IOException {
        folder.create(RealStudies.study(RealStudies.B, "Invented \"one\" \\ é", "alone", 1));
        Path alone = place.resolve("studies").resolve(RealStudies.B.value() + ".json");
        byte[] whole = Files.readAllBytes(alone);
        RealStudies.putLongAgo(alone, Arrays.copyOf(whole, whole.length / 2));
        assertThrows(NoSuchStudy.class, () -> folder.read(RealStudies.B));
        FolderTrouble trouble = folder.list(StudySearch.everything()).troubles().get(0);
        String said = Texts.english().render(trouble.text());
        assertTrue(said.contains("\"Invented \"one\" \\ é\""), said);
        assertTrue(said.matches(".*breaks off in line [0-9]+.*"), said);
        assertFalse(said.contains("JSON") || said.contains("nexpected"), said);
    }

    @Test
    void aTornStudyWithoutItsTitleHasThatOfTheVersionBefore() throws IOException {
        RealStudies.putLongAgo(file, Arrays.copyOf(second, 100));
        folder.read(RealStudies.A);
        Object study = folder.list(StudySearch.everything())
                .troubles()
                .get(0)
                .text()
                .args()
                .get("study");
        assertEquals(Message.of("folder.study-titled", "title", "Invented"), study);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Copy of %s.json", "20261126-bbbbbbbbbb.json"})
    void aCopyOfAStudyThatIsHereIsCalledSoAndNobodyIsToldToNameItLikeTheOriginal(String name) throws IOException {
        Path copy = place.resolve("studies").resolve(String.format(name, RealStudies.A.value()));
        Files.copy(file, copy);
        FolderTrouble trouble = folder.list(StudySearch.everything()).troubles().get(0);
        assertEquals(Kind.MISNAMED, trouble.kind());
        assertEquals("folder.file-copy", trouble.text().key());
        String said = Texts.english().render(trouble.text());
        assertTrue(said.contains("is a copy of \"Invented\", which is here"), said);
        assertFalse(said.contains("rename") || said.contains("as its name"), said);
        assertArrayEquals(second, Files.readAllBytes(copy));
    }

    @Test
    void aStudyUnderAnotherNameThatIsNotHereMayBeRenamed() throws IOException {
        Files.move(file, place.resolve("studies").resolve("saved.json"));
        String said = Texts.english()
                .render(folder.list(StudySearch.everything()).troubles().get(0).text());
        assertTrue(said.contains("rename it " + RealStudies.A.value() + ".json"), said);
    }
}
