package midplate.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import midplate.wire.StudyFiles;

/** Studies in the form of real files, made from the kept, invented example. */
final class RealStudies {
    static final StudyFiles FORMAT = StudyFiles.builtIn();
    static final StudyId A = new StudyId("20261126-aaaaaaaaaa");
    static final StudyId B = new StudyId("20261126-bbbbbbbbbb");
    private static final Path EXAMPLE = Path.of("shared", "studies", "version-5.json");

    private RealStudies() {}

    /** The example under another id, with other notes and so many plates. */
    static Study study(StudyId id, String title, String notes, int plates) {
        Study example;
        try {
            example = FORMAT.read(Files.readAllBytes(EXAMPLE));
        } catch (IOException | UnreadableStudy e) {
            throw new IllegalStateException(e);
        }
        List<StudyPlate> many = new ArrayList<>();
        for (int i = 1; i <= plates; i++) {
            StudyPlate plate = example.plates().get(0);
            List<StudyPlate.Lane> lanes = new ArrayList<>();
            for (StudyPlate.Lane lane : plate.lanes()) {
                String made = "l" + (i * 10 + lanes.size());
                List<StudyPlate.SpotSeen> readings = new ArrayList<>();
                for (StudyPlate.SpotSeen seen : lane.readings()) {
                    readings.add(new StudyPlate.SpotSeen(
                            "r" + (i * 100 + lanes.size() * 10 + readings.size()),
                            seen.spots(),
                            seen.given(),
                            seen.place(),
                            seen.sizeMm(),
                            seen.errorMm(),
                            seen.shape(),
                            seen.seen()));
                }
                lanes.add(new StudyPlate.Lane(made, readings));
            }
            many.add(new StudyPlate(
                    "p" + i,
                    plate.heightMm(),
                    plate.widthMm(),
                    plate.startMm(),
                    plate.frontMm(),
                    plate.weak(),
                    plate.strong(),
                    plate.eluent(),
                    plate.percentStrong(),
                    plate.additive(),
                    plate.conditions(),
                    lanes,
                    plate.notSeen(),
                    plate.photo()));
        }
        return new Study(
                id,
                title,
                example.created(),
                example.modified(),
                example.keeping(),
                example.origin(),
                example.sorbent(),
                example.setting(),
                example.shelf(),
                example.spots(),
                many,
                example.next(),
                example.advices(),
                example.column(),
                example.checks(),
                notes);
    }

    static StudyFolder open(Path place) {
        return StudyFolder.open(place, FORMAT, Clock.systemUTC());
    }

    /** Puts these bytes into a study's file, as a fault of the disk would have: long ago. */
    static void putLongAgo(Path file, byte[] content) throws IOException {
        Files.write(file, content);
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(3600)));
    }

    /** All files below a folder. */
    static List<Path> files(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
