package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;

class LinkShadowTest {
    // One plate more, in pure hexane where nothing moved, must not widen what a good plate told.
    @Test
    void aPlateThatTellsNothingDoesNotPushOutOneThatTellsMuch() {
        PlateRun good = Plates.run(Plates.ACETATE, 30, Map.of("A", 0.35));
        PlateRun empty = Plates.run(Plates.ETHER, 0, Map.of("A", 0.0));
        double before =
                Plates.width(Plates.outlook(Plates.METHANOL, Setting.AUTOMATED, List.of("A"), List.of(good)), 3);
        double after =
                Plates.width(Plates.outlook(Plates.METHANOL, Setting.AUTOMATED, List.of("A"), List.of(good, empty)), 3);
        assertTrue(after <= before + 0.02, after + " against " + before);
    }
}
