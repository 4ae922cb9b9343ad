package midplate.notebook;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * Writes a file so that at each moment, a loss of power included, its name stands for the whole old content or the whole new
 * one: into a temporary file beside it, to the disk, renamed over it, the folder to the disk.
 */
final class AtomicFile {
    private static final Pattern TEMPORARY = Pattern.compile(".+\\.(?:json|jpg)\\.[0-9a-f-]{36}\\.part");
    private static final boolean WINDOWS =
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    /** There a file that another program looks at just now cannot be replaced; it soon can. */
    private static final int TRIES = WINDOWS ? 8 : 1;

    private static final long FIRST_PAUSE_MS = 5;

    private AtomicFile() {}

    /** Something that must be done before a new content takes the place of the old one. */
    interface Before {
        /** Nothing. */
        Before NOTHING = () -> {};

        /** Does it. */
        void run() throws IOException;
    }

    /** Writes a file, in place of the one of that name where there is one. */
    static void write(Path target, byte[] content) throws IOException {
        write(target, content, Before.NOTHING);
    }

    /** The same; where the disk has no room for the new content, nothing is done before either. */
    static void write(Path target, byte[] content, Before before) throws IOException {
        Path temporary = target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            writeThrough(temporary, content);
            before.run();
            replace(temporary, target);
        } catch (IOException | RuntimeException e) {
            removeQuietly(temporary, e);
            throw e;
        }
        toDisk(target.resolveSibling(""));
    }

    /** Gives a file another name in the place of whatever bears it. */
    static void move(Path from, Path to) throws IOException {
        replace(from, to);
        toDisk(to.resolveSibling(""));
        toDisk(from.resolveSibling(""));
    }

    /** Removes what a process left that was ended while it wrote. */
    static void removeLeftOvers(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                if (TEMPORARY.matcher(file.getFileName().toString()).matches()
                        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
    }

    /** Whether files can be written in a folder: one without content, taken away again. */
    static void tryOut(Path folder) throws IOException {
        Path file = folder.resolve("try.json." + UUID.randomUUID() + ".part");
        FileChannel.open(file, CREATE_NEW, WRITE).close();
        Files.delete(file);
    }

    private static void writeThrough(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, CREATE_NEW, WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        long pause = FIRST_PAUSE_MS;
        for (int attempt = 1; ; attempt++) {
            try {
                Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
                return;
            } catch (NoSuchFileException e) {
                throw e;
            } catch (FileSystemException e) {
                if (attempt == TRIES) {
                    throw e;
                }
                pause(pause);
                pause *= 2;
            }
        }
    }

    private static void pause(long ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The names in a folder reach the disk with it; Windows writes them by itself and opens no folder for this. */
    static void toDisk(Path folder) throws IOException {
        if (WINDOWS) {
            return;
        }
        FileChannel channel;
        try {
            channel = FileChannel.open(folder, READ);
        } catch (AccessDeniedException e) {
            return; // may be written into and not read: then there is no way to do it
        }
        try (channel) {
            channel.force(true);
        } catch (IOException e) {
            if (!cannotAtAll(e)) {
                throw e;
            }
        }
    }

    /** Whether a file system knows no such thing for folders; some that are mounted over a network do not. */
    private static boolean cannotAtAll(IOException failure) {
        String said = SystemFaults.words(failure).toLowerCase(Locale.ROOT);
        return said.contains("invalid argument") || said.contains("not supported");
    }

    private static void removeQuietly(Path temporary, Exception why) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            why.addSuppressed(e); // it is cleaned at the next start
        }
    }
}
