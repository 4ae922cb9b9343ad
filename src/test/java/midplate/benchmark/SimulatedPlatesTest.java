package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import midplate.identity.Verdict;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Verdicts on drawn plates")
class SimulatedPlatesTest {
    private static final int PLATES = 4000;

    private static Figure different(double apart) {
        return JudgedPlates.of(new SimulatedPlates(778_899, 1), apart, PLATES, JudgedPlates.Sizes.TOLD)
                .share(Verdict.Outcome.DIFFERENT);
    }

    @Test
    void oneCompoundIsCalledTwoOnAtMostTwoPlatesOfAHundred() {
        assertTrue(different(0).value() <= 0.02);
    }

    @Test
    void twoThatLieFiveHundredthsApartAreToldOnFourOfFive() {
        assertTrue(different(0.05).value() >= 0.80);
    }

    @Test
    void theDrawingKnowsNothingOfTheJudging() throws IOException {
        String source = Files.readString(Path.of("src/main/java/midplate/benchmark/SimulatedPlates.java"));
        assertFalse(source.contains("midplate.identity"));
    }
}
