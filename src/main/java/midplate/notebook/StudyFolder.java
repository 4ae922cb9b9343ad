package midplate.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import midplate.notebook.FoundFile.Good;
import midplate.notebook.FoundFile.Left;
import midplate.notebook.Study.Keeping;
import midplate.notebook.StudySearch.Which;

/**
 * The folder in which the studies of a laboratory are kept, one file each: what was saved once is there after a loss of power, and
 * beside it the version before. One process keeps a folder; within it any number of threads may ask.
 *
 * <p>Every method but {@link #close} may throw {@link FolderFault}.
 */
public final class StudyFolder implements AutoCloseable {
    private static final Comparator<StudySummary> NEWEST_FIRST = Comparator.comparing(StudySummary::modified)
            .reversed()
            .thenComparing(study -> study.id().value());

    private static final long LONGEST_READING_MS = 10_000;

    private final FolderRooms rooms;
    private final FolderLock lock;
    private final KeptFiles files;
    private final KeptPhotos photos;
    private final StudyIndex index;
    private final Clock clock;
    private final Thread reader;

    private StudyFolder(FolderRooms rooms, FolderLock lock, StudyFormat format, Clock clock) {
        this.rooms = rooms;
        this.lock = lock;
        this.clock = clock;
        this.files = new KeptFiles(rooms, format, clock);
        this.photos = new KeptPhotos(rooms, files);
        this.index = new StudyIndex(rooms, files);
        this.reader = new Thread(this::readAhead, "studies");
    }

    /**
     * Opens a folder, and makes it where there is none.
     *
     * @param path where it is
     * @param format how a study is written
     * @param clock what time it is
     * @throws FolderFault where another process keeps it, or it cannot be used
     */
    public static StudyFolder open(Path path, StudyFormat format, Clock clock) {
        return open(path, format, clock, FolderLock.Locking.OF_SYSTEM);
    }

    static StudyFolder open(Path path, StudyFormat format, Clock clock, FolderLock.Locking locking) {
        FolderRooms rooms = FolderRooms.at(path);
        FolderLock lock = FolderLock.take(rooms, Instant.now(clock), locking);
        try {
            rooms.make();
            for (Path room : List.of(rooms.studies(), rooms.earlier(), rooms.setAside())) {
                prepare(rooms, room);
            }
            if (Files.isDirectory(rooms.photos(), LinkOption.NOFOLLOW_LINKS)) {
                prepare(rooms, rooms.photos());
            }
            StudyFolder folder = new StudyFolder(rooms, lock, format, clock);
            folder.reader.setDaemon(true);
            folder.reader.start();
            return folder;
        } catch (RuntimeException e) {
            lock.release();
            throw e;
        }
    }

    /** Cleans up after a process that was killed, and sees whether files can be written; on a full disk one can still read. */
    private static void prepare(FolderRooms rooms, Path room) {
        try {
            AtomicFile.removeLeftOvers(room);
            AtomicFile.tryOut(room);
        } catch (IOException e) {
            if (!SystemFaults.isFull(rooms.folder(), e)) {
                throw SystemFaults.ofOpening(rooms.folder(), room, e);
            }
        }
    }

    private void readAhead() {
        try {
            index.content();
        } catch (RuntimeException e) {
            // whoever asks for the list is told
        }
    }

    /** Where it is. */
    public Path path() {
        return rooms.folder();
    }

    /** The pictures of plates in it. */
    public KeptPhotos photos() {
        return photos;
    }

    /** Says in the folder where its page is, for a second process that would like to have it. */
    public void servedAt(String address) {
        lock.servedAt(address);
    }

    /** The studies that a search finds, and what is the matter with other files. */
    public StudyList list(StudySearch search) {
        files.checkOpen();
        StudyIndex.Content content = index.content();
        Predicate<String> found = SearchWords.allOf(search.find());
        List<StudySummary> all = content.studies().stream()
                .filter(listed -> isMeant(search.which(), listed.summary()) && found.test(listed.words()))
                .map(StudyIndex.Listed::summary)
                .sorted(NEWEST_FIRST)
                .toList();
        List<StudySummary> part =
                all.stream().skip(search.from()).limit(search.most()).toList();
        return new StudyList(all.size(), part, Troubles.of(rooms, content, files.damagedAside()));
    }

    private static boolean isMeant(Which which, StudySummary study) {
        return switch (which) {
            case ALL -> true;
            case AT_HAND -> study.keeping() == Keeping.AT_HAND;
            case ARCHIVED -> study.keeping() == Keeping.ARCHIVED;
        };
    }

    /**
     * A study.
     *
     * @throws NoSuchStudy where there is none of that id
     */
    public KeptStudy read(StudyId id) {
        files.checkOpen();
        return files.kept(found(id).orElseThrow(() -> new NoSuchStudy(id)));
    }

    /**
     * Keeps a study that is new here; when it was made and changed is set.
     *
     * @throws StudyConflict where there is one of that id
     */
    public KeptStudy create(Study study) {
        return files.whileNothingElseIsSaved(() -> {
            found(study.id()).ifPresent(there -> {
                throw new StudyConflict(files.kept(there));
            });
            Instant now = now();
            return files.writeFirst(study.at(now, now));
        });
    }

    /**
     * Keeps a study in the place of the state of it that is expected there; when it was made is left, when it was changed is set.
     *
     * @throws NoSuchStudy where there is none of that id
     * @throws StudyConflict where there is another state of it
     */
    public KeptStudy replace(Study study, StudyTag expected) {
        return changed(study.id(), expected, before -> study);
    }

    /**
     * Puts a study away, or takes it out again.
     *
     * @throws NoSuchStudy where there is none of that id
     * @throws StudyConflict where there is another state of it than expected
     */
    public KeptStudy keep(StudyId id, StudyTag expected, Keeping keeping) {
        return changed(id, expected, before -> before.keeping(keeping));
    }

    private KeptStudy changed(StudyId id, StudyTag expected, UnaryOperator<Study> change) {
        return files.whileNothingElseIsSaved(() -> {
            Good there = found(id).orElseThrow(() -> new NoSuchStudy(id));
            if (!there.tag().equals(expected)) {
                throw new StudyConflict(files.kept(there));
            }
            Study before = there.study();
            Instant now = now();
            Instant modified =
                    now.isBefore(before.modified()) ? before.modified() : now; // clocks are set back at times
            return files.writeOver(there, change.apply(before).at(before.created(), modified));
        });
    }

    private Optional<Good> found(StudyId id) {
        FoundFile found = files.at(rooms.study(id));
        if (found instanceof Left left) {
            throw left.fault();
        }
        return found instanceof Good good ? Optional.of(good) : Optional.empty();
    }

    private Instant now() {
        return Instant.now(clock).truncatedTo(ChronoUnit.MILLIS);
    }

    /** Lets the folder go, once what is being saved is saved. */
    @Override
    public void close() {
        files.close(lock::release);
        try {
            reader.join(LONGEST_READING_MS); // it stops at the next file
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
