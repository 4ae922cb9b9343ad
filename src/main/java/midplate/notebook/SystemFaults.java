package midplate.notebook;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.List;
import java.util.Locale;
import midplate.notebook.FolderFault.Kind;
import midplate.words.Message;

/** What the system said, as a fault that a person can act upon. */
final class SystemFaults {
    /** As systems word it in English; where they speak otherwise, the room left on the disk tells. */
    private static final List<String> FULL =
            List.of("no space left", "not enough space", "file too large", "quota exceeded", "disk is full");

    private static final List<String> DENIED =
            List.of("read-only", "permission denied", "not permitted", "access is denied");
    /** With less than this the next file hardly fits [bytes]. */
    private static final long LITTLE = 64L * 1024;

    private SystemFaults() {}

    /** The fault of something that could not be done with a file of the folder. */
    static FolderFault of(Path folder, Path file, IOException failure) {
        Object said = said(failure);
        String came = file.toString();
        if (isFull(folder, failure)) {
            return FolderFault.of(
                    Kind.FULL,
                    came,
                    Message.of("folder.full", "folder", folder.toString(), "said", said),
                    Message.of("todo.make-room"));
        }
        if (isDenied(failure)) {
            return FolderFault.of(
                    Kind.NO_PERMISSION,
                    came,
                    Message.of("folder.no-permission", "file", came, "said", said),
                    Message.of("todo.allow-or-other-folder"));
        }
        if (failure instanceof NoSuchFileException && !Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return FolderFault.of(
                    Kind.GONE,
                    came,
                    Message.of("folder.gone", "folder", folder.toString()),
                    Message.of("todo.bring-folder-back"));
        }
        return FolderFault.of(
                Kind.OTHER,
                came,
                Message.of("folder.failed", "file", came, "said", said),
                Message.of("todo.check-disk-or-other-folder"));
    }

    /** The fault of a folder that cannot be opened: nothing of this program was there yet, or it cannot be reached. */
    static FolderFault ofOpening(Path folder, Path file, IOException failure) {
        String came = file.toString();
        if (isFull(folder, failure)) {
            return FolderFault.of(
                    Kind.FULL,
                    came,
                    Message.of("folder.opening-full", "folder", folder.toString()),
                    Message.of("todo.make-room-or-other-folder"));
        }
        boolean isDenied = isDenied(failure);
        return FolderFault.of(
                isDenied ? Kind.NO_PERMISSION : Kind.OTHER,
                came,
                isDenied
                        ? Message.of("folder.opening-denied", "file", came)
                        : Message.of("folder.opening-failed", "file", came, "said", said(failure)),
                Message.of(isDenied ? "todo.allow-or-other-folder" : "todo.other-folder"));
    }

    /** Whether it is for want of room. */
    static boolean isFull(Path folder, IOException failure) {
        if (says(failure, FULL)) {
            return true;
        }
        try {
            return !isDenied(failure)
                    && !(failure instanceof NoSuchFileException)
                    && Files.getFileStore(folder).getUsableSpace() < LITTLE;
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether it is for want of permission. */
    static boolean isDenied(IOException failure) {
        return failure instanceof AccessDeniedException
                || failure.getCause() instanceof ReadOnlyFileSystemException
                || says(failure, DENIED);
    }

    /** The system's own words, or where it has none, what kind of fault it is. */
    static Object said(IOException failure) {
        String words = words(failure);
        if (!words.isBlank()) {
            return words;
        }
        if (failure instanceof AccessDeniedException) {
            return Message.of("folder.said-denied");
        }
        return Message.of(failure instanceof NoSuchFileException ? "folder.said-nothing-there" : "folder.said-nothing");
    }

    /** The system's own words; empty where it has none. */
    static String words(IOException failure) {
        String words = failure instanceof FileSystemException file ? file.getReason() : failure.getMessage();
        return words == null ? "" : words;
    }

    private static boolean says(IOException failure, List<String> words) {
        String said = words(failure).toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(said::contains);
    }
}
