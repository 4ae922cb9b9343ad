package midplate.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import midplate.notebook.FolderFault.Kind;
import midplate.notebook.FoundFile.Damaged;
import midplate.notebook.FoundFile.Good;
import midplate.notebook.FoundFile.Left;
import midplate.words.Message;

/**
 * The files of the studies: each save leaves the version before in its own folder, a damaged file makes room for that version and is
 * kept aside. One save at a time.
 */
final class KeptFiles {
    /** A file changed so lately may still be on its way here: it is looked at again before it is called damaged. */
    private static final Duration SETTLED = Duration.ofSeconds(2);

    private static final int LOOKS = 30;

    private final FolderRooms rooms;
    private final StudyFormat format;
    private final FileReading reading;
    private final SetAside aside;
    private final ReentrantLock saving = new ReentrantLock();
    private volatile boolean closed;

    KeptFiles(FolderRooms rooms, StudyFormat format, Clock clock) {
        this.rooms = rooms;
        this.format = format;
        this.reading = new FileReading(rooms, format);
        this.aside = new SetAside(rooms, format, clock);
    }

    /** Something done while nothing else is saved. */
    interface Doing<T> {
        /** Does it. */
        T run();
    }

    /** Does something that writes, once nothing else is written; not after closing, when another process may keep the folder. */
    <T> T whileNothingElseIsSaved(Doing<T> doing) {
        saving.lock();
        try {
            checkOpen();
            return doing.run();
        } finally {
            saving.unlock();
        }
    }

    /** Whether anything may still be done here. */
    void checkOpen() {
        if (closed) {
            throw FolderFault.of(
                    Kind.CLOSED,
                    rooms.folder().toString(),
                    Message.of("folder.closed"),
                    Message.of("todo.start-again"));
        }
    }

    /** Ends it, once what is being saved is saved; whoever comes later is turned away. */
    void close(Runnable last) {
        saving.lock();
        try {
            if (!closed) {
                closed = true;
                last.run();
            }
        } finally {
            saving.unlock();
        }
    }

    /** Makes what is missing of the folders inside. */
    void makeRooms() {
        whileNothingElseIsSaved(() -> {
            rooms.make();
            return rooms;
        });
    }

    /** What lies at a place; what was damaged there is set aside first, and the version before put back. */
    FoundFile at(Path file) {
        checkOpen();
        FoundFile found = reading.look(file);
        for (int look = 1; found instanceof Damaged && look < LOOKS && isFresh(file); look++) {
            pause();
            found = reading.look(file);
        }
        if (found instanceof Damaged && isFresh(file)) {
            return inTheMaking(file);
        }
        return found instanceof Damaged ? whileNothingElseIsSaved(() -> mended(file)) : found;
    }

    private Left inTheMaking(Path file) {
        String shown = rooms.shown(file);
        return Left.of(shown, FolderTrouble.Kind.UNREADABLE, Message.of("folder.file-in-the-making", "file", shown));
    }

    private static boolean isFresh(Path file) {
        try {
            Duration age = Duration.between(Files.getLastModifiedTime(file).toInstant(), Instant.now());
            return age.abs().compareTo(SETTLED) < 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static void pause() {
        try {
            Thread.sleep(SETTLED.toMillis() / 10);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private FoundFile mended(Path file) {
        if (!(reading.look(file) instanceof Damaged damaged)) {
            return reading.look(file);
        }
        try {
            rooms.make();
            Path before = rooms.earlier(damaged.id());
            if (reading.look(before) instanceof Good good) {
                aside.keep(damaged.id(), damaged.content());
                AtomicFile.write(file, good.content());
            } else {
                aside.move(damaged.id());
            }
            return reading.look(file);
        } catch (IOException e) {
            String shown = rooms.shown(file);
            return Left.of(
                    shown,
                    FolderTrouble.Kind.UNREADABLE,
                    Message.of(
                            "folder.file-damaged-stays",
                            "file",
                            shown,
                            "reason",
                            damaged.reason(),
                            "said",
                            SystemFaults.said(e)));
        }
    }

    /** A study with what is to be said of its file. */
    KeptStudy kept(Good good) {
        List<Message> notices = new ArrayList<>();
        StudyId id = good.study().id();
        String shown = rooms.shown(rooms.study(id));
        switch (good.seal()) {
            case FITS -> {}
            case WRONG -> notices.add(Message.of("study.seal-wrong", "file", shown));
            case MISSING -> notices.add(Message.of("study.seal-missing", "file", shown));
        }
        aside.damaged(id)
                .filter(damaged -> isVersionBefore(good))
                .ifPresent(damaged -> notices.add(Message.of(
                        "study.version-before-put-back",
                        "file",
                        rooms.shown(damaged.file()),
                        "reason",
                        damaged.reason())));
        return new KeptStudy(good.study(), good.tag(), notices);
    }

    private boolean isVersionBefore(Good good) {
        Path before = rooms.earlier(good.study().id());
        try {
            return Files.isRegularFile(before, LinkOption.NOFOLLOW_LINKS)
                    && Arrays.equals(good.content(), Files.readAllBytes(before));
        } catch (IOException e) {
            return false;
        }
    }

    /** The damaged files that were set aside. */
    List<SetAside.Damaged> damagedAside() {
        return aside.damaged();
    }

    /** Writes a study that has no file yet. */
    KeptStudy writeFirst(Study study) {
        return write(study, Optional.empty());
    }

    /** Writes a study in the place of what was found. */
    KeptStudy writeOver(Good before, Study study) {
        return write(study, Optional.of(before));
    }

    private KeptStudy write(Study study, Optional<Good> before) {
        byte[] content = FileSeal.sealed(format.write(study));
        checkReadable(study.id(), content);
        rooms.make();
        Path file = rooms.study(study.id());
        List<Message> notices = new ArrayList<>();
        try {
            AtomicFile.write(file, content, () -> {
                if (before.isPresent()) {
                    keepBefore(study.id(), before.get(), notices);
                }
                checkUnchanged(file, before);
            });
        } catch (IOException e) {
            throw SystemFaults.of(rooms.folder(), file, e);
        }
        return new KeptStudy(study, StudyTag.of(content), notices);
    }

    /** What another program put there while this save was being written is not written over. */
    private void checkUnchanged(Path file, Optional<Good> before) {
        FoundFile found = reading.look(file);
        if (found instanceof Left left) {
            throw left.fault();
        }
        if (found instanceof Damaged) {
            throw inTheMaking(file).fault();
        }
        if (found instanceof Good now && !before.map(Good::tag).equals(Optional.of(now.tag()))) {
            throw new StudyConflict(kept(now));
        }
    }

    /** The good version becomes the version before; one that was changed from outside never takes the place of a good one. */
    private void keepBefore(StudyId id, Good before, List<Message> notices) throws IOException {
        if (before.seal() == FileSeal.State.FITS) {
            AtomicFile.write(rooms.earlier(id), before.content());
            return;
        }
        Path kept = aside.keep(id, before.content());
        notices.add(Message.of("study.outside-version-kept", "file", rooms.shown(kept)));
    }

    /** What could not be read again must not take the place of what can. */
    private void checkReadable(StudyId id, byte[] content) {
        try {
            if (format.read(FileSeal.without(content)).id().equals(id)) {
                return;
            }
        } catch (UnreadableStudy e) {
            throw new IllegalStateException("A study was written that cannot be read: " + e.getMessage(), e);
        }
        throw new IllegalStateException("A study was written under another id");
    }
}
