package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Verdicts on made-up reactions. The limits are own choices; seeds are not those with which the figures were chosen. */
class ReactionTrialTest {
    @Test
    void rarelyCallsAnEndOrAStallOrAFailureThatIsNone() {
        ReactionTrial trial = new ReactionTrial();
        trial.run(424242, 250);
        String table = trial.table();
        assertTrue(trial.falseEnds <= 0.02 * trial.verdicts, table);
        assertTrue(trial.reactionsWithFalseEnd <= 0.04 * trial.reactions, table);
        assertTrue(trial.falseStalls <= 0.02 * trial.verdicts, table);
        assertTrue(trial.falseWrongs <= 0.03 * trial.verdicts, table);
        assertTrue(trial.endsTold >= 0.85 * trial.ends, table);
        assertTrue(trial.endsByPlates[0] >= 0.7 * trial.ends, table);
    }

    @Test
    void theReactionsKnowNothingOfTheVerdict() throws IOException {
        String source = Files.readString(
                Path.of("src", "test", "java", "midplate", "identity", "invented", "InventedReactions.java"));
        assertFalse(source.contains("import midplate"), "an import of what is checked");
    }
}
