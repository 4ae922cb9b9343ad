package midplate.notebook;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import midplate.notebook.FolderFault.Kind;
import midplate.words.Message;

/**
 * The pictures of plates that somebody wanted to be kept, one file each, named after the study and its own SHA-256. A study need not
 * be in the folder yet; a copy of a study is shown the pictures of the one it was copied from. Nothing takes a picture away but {@link #remove}: a study that was put away keeps its own.
 *
 * <p>Every method may throw {@link FolderFault}.
 */
public final class KeptPhotos {
    /** The largest picture that is kept [bytes]. */
    public static final int MOST_BYTES = 600_000;

    private final FolderRooms rooms;
    private final KeptFiles files;

    KeptPhotos(FolderRooms rooms, KeptFiles files) {
        this.rooms = rooms;
        this.files = files;
    }

    /** Keeps a picture; one that is there already is left. */
    public PhotoName keep(StudyId study, byte[] picture) {
        PhotoName name = PhotoName.of(picture);
        if (picture.length > MOST_BYTES) {
            throw new IllegalArgumentException("A picture of " + picture.length + " bytes");
        }
        return files.whileNothingElseIsSaved(() -> {
            rooms.makePhotos();
            Path file = rooms.photo(study, name);
            try {
                if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isPlain(file)) {
                    throw noPlainFile(file);
                }
                AtomicFile.write(file, picture);
                return name;
            } catch (IOException e) {
                throw SystemFaults.of(rooms.folder(), file, e);
            }
        });
    }

    /**
     * A picture as it was kept, with this study or, since the same name means the same picture, with another.
     *
     * @throws NoSuchPhoto where there is none
     */
    public byte[] read(StudyId study, PhotoName name) {
        files.checkOpen();
        try {
            return content(found(rooms.photo(study, name), name), name);
        } catch (NoSuchPhoto none) {
            return content(ofAnyStudy(name), name);
        }
    }

    private byte[] content(Path file, PhotoName name) {
        try {
            if (Files.size(file) <= MOST_BYTES) {
                byte[] picture = Files.readAllBytes(file);
                if (PhotoName.of(picture).equals(name)) {
                    return picture;
                }
            }
        } catch (NoSuchFileException e) {
            throw new NoSuchPhoto(name);
        } catch (IOException e) {
            throw unreadable(file, "folder.file-unreadable", "said", SystemFaults.said(e));
        }
        throw unreadable(file, "folder.photo-changed");
    }

    /**
     * Takes a picture out of the folder for good.
     *
     * @throws NoSuchPhoto where there is none
     */
    public void remove(StudyId study, PhotoName name) {
        files.whileNothingElseIsSaved(() -> {
            Path file = found(rooms.photo(study, name), name);
            try {
                Files.deleteIfExists(file);
                AtomicFile.toDisk(rooms.photos());
                return name;
            } catch (IOException e) {
                throw SystemFaults.of(rooms.folder(), file, e);
            }
        });
    }

    /** The plain file of a picture; links, that of the room too, are not followed. */
    private Path found(Path file, PhotoName name) {
        if (!Files.isDirectory(rooms.photos(), LinkOption.NOFOLLOW_LINKS)) {
            throw new NoSuchPhoto(name);
        }
        try {
            if (isPlain(file)) {
                return file;
            }
        } catch (NoSuchFileException e) {
            throw new NoSuchPhoto(name);
        } catch (IOException e) {
            throw unreadable(file, "folder.file-unreadable", "said", SystemFaults.said(e));
        }
        throw noPlainFile(file);
    }

    private Path ofAnyStudy(PhotoName name) {
        if (Files.isDirectory(rooms.photos(), LinkOption.NOFOLLOW_LINKS)) {
            try (DirectoryStream<Path> same = Files.newDirectoryStream(rooms.photos(), FolderRooms.photos(name))) {
                for (Path file : same) {
                    return found(file, name);
                }
            } catch (IOException | DirectoryIteratorException e) {
                throw new NoSuchPhoto(name);
            }
        }
        throw new NoSuchPhoto(name);
    }

    private static boolean isPlain(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                .isRegularFile();
    }

    private FolderFault noPlainFile(Path file) {
        return unreadable(file, "folder.file-no-plain");
    }

    private FolderFault unreadable(Path file, String key, Object... further) {
        String shown = rooms.shown(file);
        List<Object> args = new ArrayList<>(List.of("file", shown));
        args.addAll(List.of(further));
        return FolderFault.of(
                Kind.UNREADABLE, shown, Message.of(key, args.toArray()), Message.of("todo.take-photo-again"));
    }
}
