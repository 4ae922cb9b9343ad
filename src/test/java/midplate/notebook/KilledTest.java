package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that saves without pause is killed at moments taken at random, as by {@code kill -9}. What it said it had saved must be
 * there, whole, with nothing set aside. The same moments come again with {@code -Dmidplate.seed=SEED}, as far as a machine can.
 */
class KilledTest {
    private static final long LONGEST_START_MS = 60_000;

    @TempDir
    private Path place;

    /** For how many kills something of each kind came about: a test in which nothing was ever half done would show nothing. */
    private int saves;

    private int leftOvers;

    private int beforeTheFirstSave;

    @Test
    void whatWasSavedOutlivesTwentyKills() throws Exception {
        kill(20);
    }

    @Test
    @Tag("slow")
    void whatWasSavedOutlivesAThousandKills() throws Exception {
        kill(Integer.getInteger("midplate.kills", 1000));
        assertTrue(leftOvers > 0, "no kill hit a write");
    }

    private void kill(int times) throws Exception {
        long seed = Long.getLong("midplate.seed", System.nanoTime());
        Random random = new Random(seed);
        Map<Integer, Integer> saved = new TreeMap<>();
        for (int kill = 0; kill < times; kill++) {
            String told = "kill " + kill + " of seed " + seed;
            List<String> said = runAndKill(random, told);
            said.stream()
                    .filter(line -> line.contains(" "))
                    .map(line -> line.split(" "))
                    .forEach(pair -> {
                        saved.put(Integer.parseInt(pair[0]), Integer.parseInt(pair[1]));
                        saves++;
                    });
            beforeTheFirstSave += said.size() <= 1 ? 1 : 0;
            assertAllThere(saved, told);
        }
        System.out.printf(
                Locale.ROOT,
                "%d kills, seed %d: %d saves told, %d half-written files found, %d kills before the first save%n",
                times,
                seed,
                saves,
                leftOvers,
                beforeTheFirstSave);
        assertTrue(saves > times, "saves: " + saves);
    }

    /** What the process said until it was killed; mostly while it saves, at times while it opens the folder. */
    private List<String> runAndKill(Random random, String told) throws Exception {
        Process child = new ProcessBuilder(
                        SavingChild.command(SavingChild.class, place.toString(), Long.toString(random.nextLong())))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> said = new ArrayList<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            int heard = random.nextInt(10); // none: while it starts; one: before its first save
            while (said.size() < heard) {
                said.add(String.valueOf(lines.readLine()));
            }
            assertTrue(!said.contains("null"), told + ": it ended by itself");
            long wait = random.nextInt(heard == 0 ? 1500 : 150);
            Thread.sleep(wait);
            child.toHandle().destroyForcibly(); // the process itself would close what it said as well
            String line = lines.readLine();
            while (line != null) {
                said.add(line);
                line = lines.readLine();
            }
        } finally {
            child.destroyForcibly();
            assertTrue(child.waitFor(LONGEST_START_MS, TimeUnit.MILLISECONDS), told);
        }
        return said;
    }

    private void assertAllThere(Map<Integer, Integer> saved, String told) throws IOException {
        leftOvers += parts().size();
        try (StudyFolder folder = RealStudies.open(place)) {
            StudyList list = folder.list(StudySearch.everything());
            assertEquals(List.of(), list.troubles(), told);
            assertEquals(List.of(), parts(), told);
            assertEquals(List.of(), RealStudies.files(place.resolve("set-aside")), told);
            for (Map.Entry<Integer, Integer> each : saved.entrySet()) {
                KeptStudy kept = folder.read(SavingChild.id(each.getKey()));
                assertEquals(List.of(), kept.notices(), told);
                int count = SavingChild.count(kept.study());
                assertTrue(count >= each.getValue(), told + ": said " + each.getValue() + ", kept " + count);
                assertEarlierIsWhole(kept, count, told);
                each.setValue(count);
            }
            assertTrue(list.total() >= saved.size(), told);
        }
    }

    /** The version before is whole too: the one before this one, or this one where the kill came between the two. */
    private void assertEarlierIsWhole(KeptStudy kept, int count, String told) {
        if (count < 2) {
            return;
        }
        Path earlier = new FolderRooms(place).earlier(kept.study().id());
        FoundFile found = new FileReading(new FolderRooms(place), RealStudies.FORMAT).look(earlier);
        assertTrue(found instanceof FoundFile.Good, told + ": " + found);
        FoundFile.Good good = (FoundFile.Good) found;
        assertEquals(FileSeal.State.FITS, good.seal(), told);
        int before = SavingChild.count(good.study());
        assertTrue(before == count || before == count - 1, told + ": " + before + " before " + count);
    }

    private List<String> parts() throws IOException {
        return RealStudies.files(place).stream()
                .map(Path::toString)
                .filter(name -> name.endsWith(".part"))
                .collect(Collectors.toList());
    }
}
