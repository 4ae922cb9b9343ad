package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import midplate.notebook.FolderFault.Kind;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Places that are no folder, or may not be used; links that lead elsewhere; names that would be paths. */
class FolderPlaceTest {
    @TempDir
    private Path place;

    private Kind refused(Path path) {
        return assertThrows(FolderFault.class, () -> RealStudies.open(path).close())
                .kind();
    }

    @Test
    void aFileWhereTheFolderOrOneOnTheWayToItShouldBeIsLeftAlone() throws IOException {
        Path file = Files.writeString(place.resolve("data"), "invented");
        assertEquals(Kind.NO_FOLDER, refused(file));
        assertEquals(Kind.NO_FOLDER, refused(file.resolve("below")));
        assertEquals("invented", Files.readString(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"studies", "earlier", "set-aside"})
    void aFileOrALinkWhereAFolderInsideShouldBeIsLeftAlone(String room) throws IOException {
        Path file = Files.writeString(place.resolve(room), "invented");
        assertEquals(Kind.NO_FOLDER, refused(place));
        assertEquals("invented", Files.readString(file));
        Files.delete(file);
        Path elsewhere = Files.createTempDirectory(place.getParent(), "elsewhere");
        Files.createSymbolicLink(file, elsewhere);
        FolderFault fault =
                assertThrows(FolderFault.class, () -> RealStudies.open(place).close());
        assertEquals(Kind.NO_FOLDER, fault.kind());
        assertEquals("folder.is-link", fault.refusal().reason().key());
        assertEquals(List.of(), RealStudies.files(elsewhere));
        Files.delete(file);
        Files.delete(elsewhere);
        RealStudies.open(place).close();
    }

    @Test
    void aLinkInPlaceOfTheLockFileIsNotWrittenThrough() throws IOException {
        Path elsewhere = Files.writeString(place.resolve("diary.txt"), "invented");
        Path data = Files.createDirectory(place.resolve("data"));
        Files.createSymbolicLink(data.resolve("midplate.lock"), elsewhere);
        assertEquals(Kind.NO_FOLDER, refused(data));
        assertEquals("invented", Files.readString(elsewhere));
    }

    @Test
    void theFolderItselfMayBeReachedThroughALink() throws IOException {
        Path data = Files.createDirectory(place.resolve("data"));
        Path link = Files.createSymbolicLink(place.resolve("link"), data);
        try (StudyFolder folder = RealStudies.open(link)) {
            folder.create(RealStudies.study(RealStudies.A, "Invented", "", 1));
            assertEquals(data.toRealPath(), folder.path());
        }
        assertTrue(Files.exists(data.resolve("studies").resolve(RealStudies.A.value() + ".json")));
    }

    @Test
    void aLinkNamedLikeAStudyIsNeitherReadNorWrittenThrough() throws IOException {
        try (StudyFolder folder = RealStudies.open(place.resolve("data"))) {
            folder.create(RealStudies.study(RealStudies.B, "Invented", "", 1));
            Path study = folder.path().resolve("studies").resolve(RealStudies.B.value() + ".json");
            Path elsewhere = Files.move(study, place.resolve(RealStudies.A.value() + ".json"));
            byte[] content = Files.readAllBytes(elsewhere);
            Files.createSymbolicLink(study, elsewhere);
            Path dangling = folder.path().resolve("studies").resolve(RealStudies.A.value() + ".json");
            Files.createSymbolicLink(dangling, place.resolve("nothing.json"));
            for (StudyId id : List.of(RealStudies.A, RealStudies.B)) {
                Study mine = RealStudies.study(id, "Invented", "mine", 1);
                assertEquals(
                        Kind.UNREADABLE,
                        assertThrows(FolderFault.class, () -> folder.create(mine))
                                .kind());
                assertEquals(
                        Kind.UNREADABLE,
                        assertThrows(FolderFault.class, () -> folder.replace(mine, StudyTag.of(content)))
                                .kind());
            }
            StudyList list = folder.list(StudySearch.everything());
            assertEquals(0, list.total());
            assertEquals(
                    List.of(FolderTrouble.Kind.NO_PLAIN_FILE, FolderTrouble.Kind.NO_PLAIN_FILE),
                    list.troubles().stream().map(FolderTrouble::kind).toList());
            assertArrayEquals(content, Files.readAllBytes(elsewhere));
            assertTrue(Files.notExists(place.resolve("nothing.json"), LinkOption.NOFOLLOW_LINKS));
        }
    }

    @Test
    void aFolderNamedLikeAStudyIsLeftAlone() throws IOException {
        try (StudyFolder folder = RealStudies.open(place)) {
            Path odd = Files.createDirectory(place.resolve("studies").resolve(RealStudies.A.value() + ".json"));
            assertEquals(
                    Kind.UNREADABLE,
                    assertThrows(FolderFault.class, () -> folder.read(RealStudies.A))
                            .kind());
            assertEquals(1, folder.list(StudySearch.everything()).troubles().size());
            assertTrue(Files.isDirectory(odd));
        }
    }

    @Test
    void aFolderWithoutPermissionIsToldAndSoIsOneThatLosesIt() throws IOException {
        assumeTrue(!"root".equals(System.getProperty("user.name")), "skipped: root may write everywhere");
        assumeTrue(
                Files.getFileStore(place).supportsFileAttributeView("posix"), "skipped: no permissions of this kind");
        Path data = Files.createDirectory(place.resolve("data"));
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("r-xr-xr-x"));
        assertEquals(Kind.NO_PERMISSION, refused(data));
        assertEquals(Kind.NO_PERMISSION, refused(data.resolve("below")));
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwxr-xr-x"));
        try (StudyFolder folder = RealStudies.open(data)) {
            KeptStudy kept = folder.create(RealStudies.study(RealStudies.A, "Invented", "", 1));
            Path studies = data.resolve("studies");
            Files.setPosixFilePermissions(studies, PosixFilePermissions.fromString("r-xr-xr-x"));
            Study mine = RealStudies.study(RealStudies.A, "Invented", "mine", 1);
            assertEquals(
                    Kind.NO_PERMISSION,
                    assertThrows(FolderFault.class, () -> folder.replace(mine, kept.tag()))
                            .kind());
            assertEquals(kept, folder.read(RealStudies.A));
            Files.setPosixFilePermissions(studies, PosixFilePermissions.fromString("rwxr-xr-x"));
            Path file = studies.resolve(RealStudies.A.value() + ".json");
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
            assertEquals(
                    List.of(FolderTrouble.Kind.UNREADABLE),
                    folder.list(StudySearch.everything()).troubles().stream()
                            .map(FolderTrouble::kind)
                            .toList());
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
            assertEquals(1, folder.list(StudySearch.everything()).total());
        }
    }

    @Test
    void aFolderThatVanishedIsNotMadeAnew() throws IOException {
        Path data = place.resolve("data");
        try (StudyFolder folder = RealStudies.open(data)) {
            Path away = Files.move(data, place.resolve("away"));
            Study study = RealStudies.study(RealStudies.A, "Invented", "", 1);
            assertEquals(
                    Kind.GONE,
                    assertThrows(FolderFault.class, () -> folder.create(study)).kind());
            assertTrue(Files.notExists(data));
            Files.move(away, data);
            folder.create(study);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../x",
                "con",
                "20261126-../../etcx",
                "20261126-aaaaaaaaa",
                "20261126-aaaaaaaaaaa",
                "20261126-AAAAAAAAAA",
                "20261126-aaaaaaaaa/",
                "20261126-aaaaaaaa..",
                " 20261126-aaaaaaaaaa",
                "20261126-aaaaaaaaaa\n",
                "20261126-aaaaaaaaa\u0000",
                "C:20261126-aaaaaaaaaa",
                "٢٠٢٦١١٢٦-aaaaaaaaaa",
                "20261126-aaaaaaaaaа",
                ""
            })
    void nothingButAnIdIsAnId(String text) {
        assertEquals(Optional.empty(), StudyId.in(text));
        assertThrows(IllegalArgumentException.class, () -> new StudyId(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../../../etc/passwd",
                "con",
                "NUL.txt",
                "a/b\\c:d*e?f\"g<h>i|j",
                "<script>alert(1)</script>",
                "=cmd|' /C calc'!A0",
                "\u202Egnp.exe",
                "🧪 Küvette \u0301\u0301\u0301",
                "%s%n{0}${x}",
                "'; DROP TABLE studies; --",
                ".",
                "..",
                "~",
                " ",
                "\"sha256\": \"0000\",",
                ""
            })
    void aTitleIsATextAndNeverAPath(String title) throws IOException {
        Path data = place.resolve("deep").resolve("data");
        try (StudyFolder folder = RealStudies.open(data)) {
            KeptStudy kept = folder.create(RealStudies.study(RealStudies.A, title, title, 1));
            assertEquals(title, kept.study().title());
            assertEquals(kept, folder.read(RealStudies.A));
            KeptStudy again = folder.replace(kept.study(), kept.tag());
            assertEquals(again, folder.read(RealStudies.A));
            assertEquals(
                    title,
                    folder.list(StudySearch.everything()).studies().get(0).title());
        }
        String name = RealStudies.A.value() + ".json";
        assertEquals(
                List.of(
                        data.resolve("earlier").resolve(name),
                        data.resolve("midplate.lock"),
                        data.resolve("studies").resolve(name)),
                RealStudies.files(place));
    }

    @Test
    void aPlaceWhereNoFolderCanBeMadeIsNotToldAsIfSomethingHadBeenThere() {
        Path proc = Path.of("/proc");
        assumeTrue(Files.isDirectory(proc), "skipped: no such place on this system");
        for (Path odd : List.of(proc.resolve("none"), proc.resolve("none").resolve("below"))) {
            FolderFault fault =
                    assertThrows(FolderFault.class, () -> RealStudies.open(odd).close());
            String said = Texts.english().render(fault.refusal().reason())
                    + " "
                    + Texts.english().render(fault.refusal().todo());
            assertFalse(said.contains("no longer") || said.contains("again") || said.contains("before"), said);
            assertFalse(said.contains("Exception"), said);
            assertTrue(said.contains("--data"), said);
        }
    }

    @Test
    void aFaultWithoutWordsOfItsOwnIsToldInWords() {
        for (IOException fault :
                List.of(new AccessDeniedException("/x"), new NoSuchFileException("/x"), new IOException())) {
            for (Language language : Language.values()) {
                String said = Texts.of(language)
                        .render(Message.of("folder.file-unreadable", "file", "x", "said", SystemFaults.said(fault)));
                assertFalse(said.contains("Exception"), said);
            }
        }
    }
}
