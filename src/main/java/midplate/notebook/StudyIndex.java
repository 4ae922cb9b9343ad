package midplate.notebook;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.FileVisitor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import midplate.notebook.FoundFile.Good;
import midplate.notebook.FoundFile.Left;

/**
 * What stands in the files of the studies, kept in memory: before each listing the files that came, went or changed are looked at,
 * told by name, size and time.
 */
final class StudyIndex {
    /** A file changed within this time of being read may have changed again without a new time [coarsest clocks: 2 s]. */
    private static final Duration COARSE = Duration.ofSeconds(3);

    private final FolderRooms rooms;
    private final KeptFiles files;
    private final Map<Path, Entry> entries = new ConcurrentHashMap<>();

    StudyIndex(FolderRooms rooms, KeptFiles files) {
        this.rooms = rooms;
        this.files = files;
    }

    /**
     * A file as it was when it was looked at.
     *
     * @param seen size and time of the file
     * @param read when
     * @param summary of the study
     * @param words all that a search looks in
     * @param trouble why it is no study
     */
    private record Entry(
            BasicFileAttributes seen,
            Instant read,
            Optional<StudySummary> summary,
            String words,
            Optional<FolderTrouble> trouble) {
        boolean isOf(BasicFileAttributes now) {
            boolean same = seen.size() == now.size()
                    && seen.lastModifiedTime().equals(now.lastModifiedTime())
                    && Objects.equals(seen.fileKey(), now.fileKey());
            Duration age = Duration.between(seen.lastModifiedTime().toInstant(), read);
            return same && age.abs().compareTo(COARSE) > 0;
        }
    }

    /**
     * What the index holds.
     *
     * @param studies with what a search looks in
     * @param troubles files that are none
     */
    record Content(List<Listed> studies, List<FolderTrouble> troubles) {}

    /** A study in the list. */
    record Listed(StudySummary summary, String words) {}

    /** All there is, once the files that changed were looked at. */
    synchronized Content content() {
        Map<Path, BasicFileAttributes> there = files();
        entries.keySet().retainAll(there.keySet());
        there.entrySet().parallelStream()
                .filter(file -> {
                    Entry known = entries.get(file.getKey());
                    return known == null || !known.isOf(file.getValue());
                })
                .forEach(file -> look(file.getKey(), file.getValue()));
        Collection<Entry> all = entries.values();
        return new Content(
                all.stream()
                        .flatMap(entry -> entry.summary().stream().map(study -> new Listed(study, entry.words())))
                        .toList(),
                all.stream().flatMap(entry -> entry.trouble().stream()).toList());
    }

    private void look(Path file, BasicFileAttributes seen) {
        Instant now = Instant.now();
        FoundFile found = files.at(file);
        if (found instanceof Good good) {
            StudySummary summary = StudySummary.of(files.kept(good));
            entries.put(
                    file, new Entry(seen, now, Optional.of(summary), SearchWords.of(good.study()), Optional.empty()));
        } else if (found instanceof Left left) {
            entries.put(file, new Entry(seen, now, Optional.empty(), "", Optional.of(left.trouble())));
        } else {
            entries.remove(file);
        }
    }

    private Map<Path, BasicFileAttributes> files() {
        Map<Path, BasicFileAttributes> found = new HashMap<>();
        FileVisitor<Path> each = new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (FolderRooms.isStudyLike(file)) {
                    found.put(file, attributes);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
                if (file.equals(rooms.studies())) {
                    throw e;
                }
                return FileVisitResult.CONTINUE; // gone since
            }
        };
        files.makeRooms();
        try {
            Files.walkFileTree(rooms.studies(), EnumSet.noneOf(FileVisitOption.class), 1, each);
            return found;
        } catch (IOException e) {
            throw SystemFaults.of(rooms.folder(), rooms.studies(), e);
        }
    }
}
