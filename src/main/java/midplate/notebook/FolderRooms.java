package midplate.notebook;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import midplate.notebook.FolderFault.Kind;
import midplate.words.Message;

/**
 * What lies where in the folder. Links inside of it are not followed, so that nothing outside is written; the folder itself may be
 * reached through one.
 *
 * @param folder the folder, with all links on the way to it resolved
 */
record FolderRooms(Path folder) {
    private static final String ENDING = ".json";

    /** The folder at a path, made where there is none. */
    static FolderRooms at(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        try {
            boolean isNew = !Files.isDirectory(whole);
            Files.createDirectories(whole);
            if (isNew) {
                AtomicFile.toDisk(whole.resolveSibling(""));
            }
            return new FolderRooms(whole.toRealPath());
        } catch (FileAlreadyExistsException | NotDirectoryException e) {
            throw notAFolder(whole);
        } catch (IOException e) {
            for (Path above = whole; above != null; above = above.getParent()) {
                if (Files.exists(above) && !Files.isDirectory(above)) {
                    throw notAFolder(above);
                }
            }
            throw SystemFaults.ofOpening(whole, whole, e);
        }
    }

    /** Where the process that keeps the folder says so. */
    Path lock() {
        return folder.resolve("midplate.lock");
    }

    /** The studies as they are now. */
    Path studies() {
        return folder.resolve("studies");
    }

    /** The version before of each. */
    Path earlier() {
        return folder.resolve("earlier");
    }

    /** Damaged files, and such as were changed from outside and then saved over. */
    Path setAside() {
        return folder.resolve("set-aside");
    }

    /** The pictures of plates; there is no such folder before the first is kept. */
    Path photos() {
        return folder.resolve("photos");
    }

    /** The file of a picture. */
    Path photo(StudyId study, PhotoName name) {
        return photos().resolve(study.value() + "-" + name.sha256() + ".jpg");
    }

    /** The names of the files of a picture, whichever study it was kept with. */
    static String photos(PhotoName name) {
        return "*-" + name.sha256() + ".jpg";
    }

    /** The file of a study. */
    Path study(StudyId id) {
        return studies().resolve(fileName(id));
    }

    /** The version before of a study. */
    Path earlier(StudyId id) {
        return earlier().resolve(fileName(id));
    }

    static String fileName(StudyId id) {
        return id.value() + ENDING;
    }

    /** The id that a file name says; empty where it says none. */
    static Optional<StudyId> id(String fileName) {
        return fileName.endsWith(ENDING)
                ? StudyId.in(fileName.substring(0, fileName.length() - ENDING.length()))
                : Optional.empty();
    }

    /** Whether a file would be a study by its ending. */
    static boolean isStudyLike(Path file) {
        return file.getFileName().toString().endsWith(ENDING);
    }

    /** How a file is named in messages: {@code studies/…}, the same on every system. */
    String shown(Path file) {
        return folder.relativize(file).toString().replace('\\', '/').replaceAll("\\p{Cntrl}", "?");
    }

    /** Makes what is missing of the folders inside; refuses files and links in their place. */
    void make() {
        for (Path room : List.of(studies(), earlier(), setAside())) {
            make(room);
        }
    }

    /** Makes the folder of pictures where it is missing; refuses a file or a link in its place. */
    void makePhotos() {
        make(photos());
    }

    private void make(Path room) {
        if (Files.isDirectory(room, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (Files.exists(room, LinkOption.NOFOLLOW_LINKS)) {
            throw notAFolder(room);
        }
        try {
            if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
                throw new NoSuchFileException(folder.toString());
            }
            Files.createDirectory(room);
            AtomicFile.toDisk(folder);
        } catch (IOException e) {
            throw SystemFaults.of(folder, room, e);
        }
    }

    private static FolderFault notAFolder(Path there) {
        Message reason = Files.isSymbolicLink(there)
                ? Message.of("folder.is-link", "file", there.toString())
                : Message.of("folder.is-file", "file", there.toString());
        return FolderFault.of(Kind.NO_FOLDER, there.toString(), reason, Message.of("todo.move-or-other-folder"));
    }
}
