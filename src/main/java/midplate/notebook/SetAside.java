package midplate.notebook;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.words.Message;

/** The files that could not stay where they were: damaged ones, and such as somebody changed before they were saved over. */
final class SetAside {
    private static final Pattern NAME = Pattern.compile("(" + StudyId.FORM + ")\\.[0-9TZ]+(?:-[0-9]+)?\\.json");
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssSSS'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final FolderRooms rooms;
    private final StudyFormat format;
    private final Clock clock;
    /** What is known of each that cannot be read, by file name; empty for one that can. */
    private final Map<String, Optional<Damaged>> known = new ConcurrentHashMap<>();

    SetAside(FolderRooms rooms, StudyFormat format, Clock clock) {
        this.rooms = rooms;
        this.format = format;
        this.clock = clock;
    }

    /**
     * A damaged file that was set aside.
     *
     * @param id the study that it was
     * @param title its title, as far as that can still be read; else empty
     * @param file where it lies now
     * @param reason why it cannot be read
     */
    record Damaged(StudyId id, String title, Path file, Message reason) {}

    /** Keeps a copy of a study's file here; the result is its name. */
    Path keep(StudyId id, byte[] content) throws IOException {
        Path place = free(id);
        AtomicFile.write(place, content);
        return place;
    }

    /** Moves a study's file here. */
    void move(StudyId id) throws IOException {
        AtomicFile.move(rooms.study(id), free(id));
    }

    private Path free(StudyId id) {
        String stem = id.value() + "." + WHEN.format(Instant.now(clock));
        Path place = rooms.setAside().resolve(stem + ".json");
        for (int i = 2; Files.exists(place, LinkOption.NOFOLLOW_LINKS); i++) {
            place = rooms.setAside().resolve(stem + "-" + i + ".json");
        }
        return place;
    }

    /** The damaged files here; one that reads was set aside for another reason, and is none. */
    List<Damaged> damaged() {
        return damaged("*.json");
    }

    private List<Damaged> damaged(String names) {
        List<Damaged> found = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(rooms.setAside(), names)) {
            for (Path file : files) {
                Matcher name = NAME.matcher(file.getFileName().toString());
                if (name.matches() && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                    known.computeIfAbsent(name.group(), same -> looked(new StudyId(name.group(1)), file))
                            .ifPresent(found::add);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            return found; // what lies aside concerns no study at hand
        }
        return found;
    }

    /** The damaged file of a study, where there is one; the latest of several. */
    Optional<Damaged> damaged(StudyId id) {
        return damaged(id.value() + ".*.json").stream()
                .reduce((one, other) -> one.file().compareTo(other.file()) > 0 ? one : other);
    }

    private Optional<Damaged> looked(StudyId id, Path file) {
        try {
            byte[] content = Files.readAllBytes(file);
            try {
                format.read(FileSeal.without(content));
                return Optional.empty();
            } catch (UnreadableStudy e) {
                return Optional.of(new Damaged(id, TornTitle.in(content), file, FileReading.reason(e)));
            }
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }
}
