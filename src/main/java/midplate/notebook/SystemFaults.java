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
        String said = said(failure);
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

    /** The system's own words, or where it has none, the name of the fault. */
    static String said(IOException failure) {
        if (failure instanceof FileSystemException file && file.getReason() != null) {
            return file.getReason();
        }
        String name = failure.getClass().getSimpleName();
        return failure instanceof FileSystemException || failure.getMessage() == null ? name : failure.getMessage();
    }

    private static boolean says(IOException failure, List<String> words) {
        String said = said(failure).toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(said::contains);
    }
}
