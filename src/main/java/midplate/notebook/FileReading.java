package midplate.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import midplate.notebook.FoundFile.Damaged;
import midplate.notebook.FoundFile.Good;
import midplate.notebook.FoundFile.Left;
import midplate.notebook.FoundFile.Nothing;
import midplate.words.Message;

/** Looks at files of the folder and changes none. */
final class FileReading {
    /** No study is as large: it would be a file of something else [bytes]. */
    static final int MOST_BYTES = 16 * 1024 * 1024;

    private final FolderRooms rooms;
    private final StudyFormat format;

    FileReading(FolderRooms rooms, StudyFormat format) {
        this.rooms = rooms;
        this.format = format;
    }

    /** What lies at a place that bears, or should bear, the name of a study. */
    FoundFile look(Path file) {
        String shown = rooms.shown(file);
        Optional<StudyId> id = FolderRooms.id(file.getFileName().toString());
        try {
            BasicFileAttributes found =
                    Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (!found.isRegularFile()) {
                return Left.of(
                        shown, FolderTrouble.Kind.NO_PLAIN_FILE, Message.of("folder.file-no-plain", "file", shown));
            }
            if (found.size() > MOST_BYTES) {
                return Left.of(shown, FolderTrouble.Kind.TOO_LARGE, Message.of("folder.file-too-large", "file", shown));
            }
            byte[] content = Files.readAllBytes(file);
            return id.isEmpty() ? withoutId(shown, content) : understood(file, id.get(), content);
        } catch (NoSuchFileException e) {
            return new Nothing();
        } catch (IOException e) {
            return unreadable(shown, SystemFaults.said(e));
        }
    }

    /** Under such a name a person puts a copy, and one should know of which study. */
    private FoundFile withoutId(String shown, byte[] content) {
        try {
            return otherId(shown, format.read(FileSeal.without(content)).id());
        } catch (UnreadableStudy | RuntimeException e) { // whatever it is, it stays
            return Left.of(shown, FolderTrouble.Kind.MISNAMED, Message.of("folder.file-no-id", "file", shown));
        }
    }

    private static Left otherId(String shown, StudyId id) {
        return Left.of(
                shown,
                FolderTrouble.Kind.MISNAMED,
                Message.of("folder.file-other-id", "file", shown, Troubles.STUDY, id.value()));
    }

    private FoundFile understood(Path file, StudyId id, byte[] content) {
        String shown = rooms.shown(file);
        try {
            Study study = format.read(FileSeal.without(content));
            return study.id().equals(id)
                    ? new Good(study, StudyTag.of(content), FileSeal.state(content), content)
                    : otherId(shown, study.id());
        } catch (UnreadableStudy e) {
            return notUnderstood(file, id, content, e);
        } catch (RuntimeException e) { // a slip of this program must not move anybody's file
            return unreadable(shown, e.getClass().getSimpleName());
        }
    }

    private FoundFile notUnderstood(Path file, StudyId id, byte[] content, UnreadableStudy why) {
        String shown = rooms.shown(file);
        if (why.kind() == UnreadableStudy.Kind.NEWER) {
            if (FileSeal.state(content) == FileSeal.State.WRONG && hasVersionBefore(file, id)) {
                return new Damaged(id, reason(why), content);
            }
            return Left.of(
                    shown,
                    FolderTrouble.Kind.NEWER,
                    Message.of("folder.file-newer", "file", shown, "reason", why.reason()));
        }
        if (FileSeal.state(content) == FileSeal.State.FITS) { // not a byte of it changed since a Midplate wrote it
            return Left.of(
                    shown,
                    FolderTrouble.Kind.UNREADABLE,
                    Message.of("folder.file-not-understood", "file", shown, "reason", why.reason()));
        }
        return new Damaged(id, reason(why), content);
    }

    /** What is wrong with a damaged file; one that calls itself newer was changed where its version stands. */
    static Message reason(UnreadableStudy why) {
        return why.kind() == UnreadableStudy.Kind.NEWER ? Message.of("folder.version-changed") : why.reason();
    }

    private boolean hasVersionBefore(Path file, StudyId id) {
        return file.equals(rooms.study(id))
                && look(rooms.earlier(id)) instanceof Good before
                && before.seal() == FileSeal.State.FITS;
    }

    private static Left unreadable(String shown, Object said) {
        return Left.of(
                shown,
                FolderTrouble.Kind.UNREADABLE,
                Message.of("folder.file-unreadable", "file", shown, "said", said));
    }
}
