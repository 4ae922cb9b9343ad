package midplate.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import midplate.inference.PairName;
import midplate.inference.TableText;

/**
 * Three invented compounds that change places: at 4.76 % the first lies above the second and below the third (Rf 0.2, 0.1 and
 * 0.3), at 50 % below both (0.5, 0.7 and 0.73), which look like one spot there.
 */
final class CrossingCurves {
    private static final double[][] RF = {
        {0, 0.1, 0.2, 0.35, 0.4, 0.5, 0.55, 0.6},
        {0, 0.05, 0.1, 0.45, 0.6, 0.7, 0.8, 0.9},
        {0, 0.15, 0.3, 0.5, 0.6, 0.73, 0.85, 0.95}
    };

    private CrossingCurves() {}

    static List<TrueCurve> all(Path folder) throws IOException {
        TableText text = new TableText();
        for (int i = 0; i < RF.length; i++) {
            for (int j = 0; j < Invented.ACETATE.length; j++) {
                text.row(i + 1, "C".repeat(i + 1), PairName.HEXANE_ETHYL_ACETATE, Invented.ACETATE[j], RF[i][j]);
            }
        }
        return TrueCurve.of(text.read(folder).table(PairName.HEXANE_ETHYL_ACETATE));
    }
}
