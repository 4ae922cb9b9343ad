package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import midplate.notebook.FolderFault.Kind;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One process keeps a folder; who comes second is told by whom, and how to go on. */
class FolderLockTest {
    private static final String PAGE = "http://127.0.0.1:4771/";

    @TempDir
    private Path place;

    private FolderFault refused(Path path) {
        return assertThrows(FolderFault.class, () -> RealStudies.open(path).close());
    }

    private static String words(FolderFault fault) {
        return Texts.english().render(fault.refusal().reason()) + " "
                + Texts.english().render(fault.refusal().todo());
    }

    private Process keep() throws IOException {
        Process child = new ProcessBuilder(SavingChild.command(KeepingChild.class, place.toString(), PAGE))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader said = new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8));
        assertEquals("open", said.readLine());
        return child;
    }

    @Test
    void anotherProcessThatKeepsTheFolderIsNamedWithItsPage() throws Exception {
        Process child = keep();
        try {
            FolderFault fault = refused(place);
            assertEquals(Kind.IN_USE, fault.kind());
            assertTrue(words(fault).contains("process " + child.pid() + ", since 20"), words(fault));
            assertTrue(words(fault).contains("Open " + PAGE + ", or start with --data"), words(fault));
            assertEquals(Kind.IN_USE, refused(place).kind());
        } finally {
            child.getOutputStream().close();
            child.waitFor();
        }
        RealStudies.open(place).close();
    }

    @Test
    void aProcessThatWasKilledKeepsNothing() throws Exception {
        Process child = keep();
        child.destroyForcibly().waitFor();
        assertTrue(Files.readString(place.resolve("midplate.lock")).contains("process " + child.pid()));
        RealStudies.open(place).close();
    }

    @Test
    void aSecondPartOfOneProcessIsRefusedByWhateverWayItComesAndTheFirstKeepsTheLock() throws Exception {
        Path data = Files.createDirectory(place.resolve("data"));
        try (StudyFolder first = RealStudies.open(data)) {
            first.servedAt(PAGE);
            FolderFault fault = refused(data);
            assertEquals(Kind.IN_USE, fault.kind());
            assertTrue(words(fault).contains("Open " + PAGE), words(fault));
            assertEquals(
                    Kind.IN_USE, refused(data.resolve("..").resolve("data")).kind());
            Path link = Files.createSymbolicLink(place.resolve("link"), data);
            assertEquals(Kind.IN_USE, refused(link).kind());
            Process child = new ProcessBuilder(SavingChild.command(KeepingChild.class, data.toString(), PAGE))
                    .redirectErrorStream(true)
                    .start();
            assertTrue(SavingChild.said(child).toString().contains("IN_USE"), "another process, too");
            assertEquals(1, child.waitFor());
        }
        RealStudies.open(data).close();
    }

    @Test
    void aDiskThatCannotLockIsToldAndNothingIsWrittenThere() throws IOException {
        FolderFault fault = assertThrows(
                FolderFault.class,
                () -> StudyFolder.open(place, RealStudies.FORMAT, Clock.systemUTC(), (channel, at) -> {
                    throw new IOException("No locks available");
                }));
        assertEquals(Kind.NO_LOCK, fault.kind());
        assertTrue(words(fault).contains("cannot lock files (No locks available)"), words(fault));
        assertTrue(words(fault).contains("--data"), words(fault));
        assertTrue(Files.notExists(place.resolve("studies")));
        RealStudies.open(place).close();
    }

    @Test
    void whatStandsInTheLockFileIsReadAsFarAsItCanBe() {
        LockHolder me = LockHolder.me(Instant.parse("2026-11-26T13:02:11.5Z")).at(PAGE);
        assertEquals(me, LockHolder.read(me.text()));
        LockHolder half = LockHolder.read(me.text().substring(0, me.text().indexOf("since") + 12));
        assertEquals(Optional.of(Long.toString(ProcessHandle.current().pid())), half.process());
        assertEquals(Optional.empty(), half.since());
        assertEquals(
                new LockHolder(Optional.empty(), Optional.empty(), Optional.empty()),
                LockHolder.read("process x\nsince 2026-99-99T00:00:00Z\npage javascript:alert(1)\n"));
    }
}
