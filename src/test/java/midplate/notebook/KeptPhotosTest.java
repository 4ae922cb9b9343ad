package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import midplate.notebook.FolderFault.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures in the folder: whole or not there, named after what is in them, and never through a link. */
class KeptPhotosTest {
    private static final byte[] PICTURE = "abc".getBytes(StandardCharsets.US_ASCII);
    /** SHA-256 of "abc". Source: NIST, FIPS 180-2 (2002), appendix B.1. */
    private static final String SHA = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static final PhotoName NAME = new PhotoName(SHA);

    @TempDir
    private Path place;

    private Path file(StudyId id) {
        return place.resolve("photos").resolve(id.value() + "-" + SHA + ".jpg");
    }

    private static Kind refused(org.junit.jupiter.api.function.Executable doing) {
        return assertThrows(FolderFault.class, doing).kind();
    }

    @Test
    void aPictureIsKeptUnderItsDigestAndOverARestart() throws IOException {
        try (StudyFolder folder = RealStudies.open(place)) {
            assertFalse(Files.exists(place.resolve("photos")), "no folder before the first picture");
            assertThrows(NoSuchPhoto.class, () -> folder.photos().read(RealStudies.A, NAME));
            assertEquals(NAME, folder.photos().keep(RealStudies.A, PICTURE));
            assertEquals(NAME, folder.photos().keep(RealStudies.A, PICTURE));
            assertArrayEquals(PICTURE, Files.readAllBytes(file(RealStudies.A)));
        }
        Path left = Files.write(
                place.resolve("photos")
                        .resolve(file(RealStudies.A).getFileName() + ".00000000-0000-0000-0000-000000000000.part"),
                PICTURE);
        try (StudyFolder folder = RealStudies.open(place)) {
            assertFalse(Files.exists(left), "half-written files of a killed process go at the next start");
            assertArrayEquals(PICTURE, folder.photos().read(RealStudies.A, NAME));
            assertArrayEquals(PICTURE, folder.photos().read(RealStudies.B, NAME), "a copy shows it as well");
            assertThrows(NoSuchPhoto.class, () -> folder.photos().remove(RealStudies.B, NAME), "and takes none away");
            folder.photos().remove(RealStudies.A, NAME);
            assertEquals(List.of(), RealStudies.files(place.resolve("photos")));
            assertThrows(NoSuchPhoto.class, () -> folder.photos().remove(RealStudies.A, NAME));
            assertThrows(NoSuchPhoto.class, () -> folder.photos().read(RealStudies.A, NAME));
        }
    }

    @Test
    void aStudyThatIsPutAwayKeepsItsPictures() {
        try (StudyFolder folder = RealStudies.open(place)) {
            KeptStudy kept = folder.create(RealStudies.study(RealStudies.A, "Invented", "", 1));
            folder.photos().keep(RealStudies.A, PICTURE);
            folder.keep(RealStudies.A, kept.tag(), Study.Keeping.ARCHIVED);
            assertArrayEquals(PICTURE, folder.photos().read(RealStudies.A, NAME));
            assertEquals(List.of(), folder.list(StudySearch.everything()).troubles());
        }
    }

    @Test
    void aPictureChangedFromOutsideIsToldAndKeptAnewAtOnce() throws IOException {
        try (StudyFolder folder = RealStudies.open(place)) {
            folder.photos().keep(RealStudies.A, PICTURE);
            for (byte[] other : List.of(new byte[0], new byte[] {1, 2, 3}, new byte[KeptPhotos.MOST_BYTES + 1])) {
                Files.write(file(RealStudies.A), other);
                FolderFault fault =
                        assertThrows(FolderFault.class, () -> folder.photos().read(RealStudies.A, NAME));
                assertEquals(Kind.UNREADABLE, fault.kind());
                assertEquals("folder.photo-changed", fault.refusal().reason().key());
            }
            folder.photos().keep(RealStudies.A, PICTURE);
            assertArrayEquals(PICTURE, folder.photos().read(RealStudies.A, NAME));
        }
    }

    @Test
    void linksAreNeitherReadNorWrittenThroughNorTakenAway() throws IOException {
        Path elsewhere = Files.createTempDirectory(place.getParent(), "elsewhere");
        Path secret = Files.write(elsewhere.resolve("secret"), PICTURE);
        try (StudyFolder folder = RealStudies.open(place)) {
            folder.photos().keep(RealStudies.B, PICTURE);
            Files.createSymbolicLink(file(RealStudies.A), secret);
            assertEquals(Kind.UNREADABLE, refused(() -> folder.photos().read(RealStudies.A, NAME)));
            assertEquals(Kind.UNREADABLE, refused(() -> folder.photos().keep(RealStudies.A, PICTURE)));
            assertEquals(Kind.UNREADABLE, refused(() -> folder.photos().remove(RealStudies.A, NAME)));
            assertTrue(Files.exists(file(RealStudies.A), LinkOption.NOFOLLOW_LINKS));
            Files.delete(file(RealStudies.A));
            Files.delete(file(RealStudies.B));
            Files.delete(place.resolve("photos"));

            Files.move(secret, elsewhere.resolve(file(RealStudies.A).getFileName()));
            Files.createSymbolicLink(place.resolve("photos"), elsewhere);
            assertThrows(NoSuchPhoto.class, () -> folder.photos().read(RealStudies.A, NAME));
            assertThrows(NoSuchPhoto.class, () -> folder.photos().remove(RealStudies.A, NAME));
            assertEquals(Kind.NO_FOLDER, refused(() -> folder.photos().keep(RealStudies.B, PICTURE)));
            assertEquals(1, RealStudies.files(elsewhere).size());
        }
        RealStudies.open(place).close(); // studies can be kept all the same
    }

    @Test
    void whatTheSystemDoesNotAllowIsToldAsForStudies() throws IOException {
        try (StudyFolder folder = RealStudies.open(place)) {
            folder.photos().keep(RealStudies.A, PICTURE);
            Path room = place.resolve("photos");
            Files.setPosixFilePermissions(room, PosixFilePermissions.fromString("r-xr-xr-x"));
            try {
                assumeTrue(!Files.isWritable(room), "skipped: whoever runs this may write everywhere");
                assertEquals(Kind.NO_PERMISSION, refused(() -> folder.photos().keep(RealStudies.B, PICTURE)));
                assertEquals(Kind.NO_PERMISSION, refused(() -> folder.photos().remove(RealStudies.A, NAME)));
                assertArrayEquals(PICTURE, folder.photos().read(RealStudies.A, NAME));
            } finally {
                Files.setPosixFilePermissions(room, PosixFilePermissions.fromString("rwxr-xr-x"));
            }
        }
    }

    @Test
    void afterClosingNothingIsKeptOrTakenAway() {
        StudyFolder folder = RealStudies.open(place);
        folder.photos().keep(RealStudies.A, PICTURE);
        folder.close();
        assertEquals(Kind.CLOSED, refused(() -> folder.photos().read(RealStudies.A, NAME)));
        assertEquals(Kind.CLOSED, refused(() -> folder.photos().keep(RealStudies.A, PICTURE)));
        assertEquals(Kind.CLOSED, refused(() -> folder.photos().remove(RealStudies.A, NAME)));
    }

    @Test
    void aNameIsADigestAndNothingElse() {
        for (String text : List.of(
                "",
                "..",
                SHA.substring(1),
                SHA + "0",
                SHA.toUpperCase(java.util.Locale.ROOT),
                "g" + SHA.substring(1))) {
            assertTrue(PhotoName.in(text).isEmpty(), text);
            assertThrows(IllegalArgumentException.class, () -> new PhotoName(text));
        }
        assertEquals(NAME, PhotoName.in(SHA).orElseThrow());
    }
}
