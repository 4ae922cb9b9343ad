package midplate.notebook;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import midplate.notebook.FolderFault.Kind;
import midplate.words.Message;
import org.jspecify.annotations.Nullable;

/** One process keeps a folder, and one part of it: held from opening to closing, and by the system let go if the process dies. */
final class FolderLock {
    /** Folders kept by this process: to lock a file twice, or to open and close it, would give the first lock up. */
    private static final Map<Object, LockHolder> KEPT_HERE = new ConcurrentHashMap<>();

    private static final DateTimeFormatter SINCE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

    private static final int MOST_TEXT = 4096;

    /** How a file is locked; empty-handed where another process has it. */
    interface Locking {
        /** The lock on a byte, or null. */
        @Nullable
        FileLock lock(FileChannel channel, long at) throws IOException;

        /** As the system does it. */
        Locking OF_SYSTEM = (channel, at) -> channel.tryLock(at, 1, false);
    }

    private final Object key;
    private final FileChannel channel;
    private LockHolder holder;

    private FolderLock(Object key, FileChannel channel, LockHolder holder) {
        this.key = key;
        this.channel = channel;
        this.holder = holder;
    }

    /**
     * Takes a folder.
     *
     * @throws FolderFault where somebody else keeps it, or nothing can be locked there
     */
    static FolderLock take(FolderRooms rooms, Instant now, Locking locking) {
        Object key = key(rooms.folder());
        LockHolder me = LockHolder.me(now);
        LockHolder before = KEPT_HERE.putIfAbsent(key, me);
        if (before != null) {
            throw inUse(rooms, before);
        }
        try {
            FolderLock lock = new FolderLock(key, locked(rooms, locking), me);
            lock.write(me);
            return lock;
        } catch (IOException e) {
            KEPT_HERE.remove(key);
            throw SystemFaults.ofOpening(rooms.folder(), rooms.lock(), e);
        } catch (RuntimeException e) {
            KEPT_HERE.remove(key);
            throw e;
        }
    }

    private static FileChannel locked(FolderRooms rooms, Locking locking) throws IOException {
        if (Files.isSymbolicLink(rooms.lock()) || Files.isDirectory(rooms.lock(), LinkOption.NOFOLLOW_LINKS)) {
            throw FolderFault.of(
                    Kind.NO_FOLDER,
                    rooms.lock().toString(),
                    Message.of("folder.lock-no-file", "file", rooms.lock().toString()),
                    Message.of("todo.move-or-other-folder"));
        }
        FileChannel channel = FileChannel.open(rooms.lock(), Set.of(CREATE, READ, WRITE, LinkOption.NOFOLLOW_LINKS));
        try {
            if (lock(rooms, channel, locking) == null) {
                throw inUse(rooms, LockHolder.read(text(channel)));
            }
            return channel;
        } catch (RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private static @Nullable FileLock lock(FolderRooms rooms, FileChannel channel, Locking locking) {
        try {
            return locking.lock(channel, LockHolder.LOCKED_BYTE);
        } catch (IOException e) {
            throw FolderFault.of(
                    Kind.NO_LOCK,
                    rooms.folder().toString(),
                    Message.of("folder.no-lock", "folder", rooms.folder().toString(), "said", SystemFaults.said(e)),
                    Message.of("todo.take-folder-of-own-disk"));
        }
    }

    private static FolderFault inUse(FolderRooms rooms, LockHolder holder) {
        String folder = rooms.folder().toString();
        Message reason = holder.process().isPresent() && holder.since().isPresent()
                ? Message.of(
                        "folder.in-use-by",
                        "folder",
                        folder,
                        "process",
                        holder.process().get(),
                        "since",
                        SINCE.format(holder.since().get()))
                : Message.of("folder.in-use", "folder", folder);
        Message todo = holder.address()
                .map(page -> Message.of("todo.open-that-page-or-other-folder", "address", page))
                .orElseGet(() -> Message.of("todo.end-it-or-other-folder"));
        return FolderFault.of(Kind.IN_USE, folder, reason, todo);
    }

    /** Says in the lock file where the page is. */
    synchronized void servedAt(String address) {
        write(holder.at(address));
    }

    /** Lets the folder go. */
    synchronized void release() {
        try {
            if (channel.isOpen()) {
                channel.truncate(0);
            }
            channel.close();
        } catch (IOException e) {
            // the lock goes with the process at the latest
        } finally {
            KEPT_HERE.remove(key);
        }
    }

    /** Only a word to whoever comes second: a full disk must not keep anyone from reading. */
    private void write(LockHolder now) {
        holder = now;
        KEPT_HERE.replace(key, now);
        try {
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(now.text().getBytes(StandardCharsets.UTF_8)), 0);
            channel.force(false);
        } catch (IOException e) {
            // the lock itself holds
        }
    }

    private static String text(FileChannel channel) {
        ByteBuffer bytes = ByteBuffer.allocate(MOST_TEXT);
        try {
            channel.read(bytes, 0);
        } catch (IOException e) {
            return "";
        }
        return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    }

    /** The folder itself, by whatever name it is reached. */
    private static Object key(Path folder) {
        try {
            Object key = Files.readAttributes(folder, BasicFileAttributes.class).fileKey();
            return key == null ? folder : key;
        } catch (IOException e) {
            return folder;
        }
    }
}
