package midplate.inference;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Builds a table of invented measurements in the form of {@code tlc.csv}. */
public final class TableText {
    static final String HEADER =
            "compound_id,cas,name,smiles,hexane,ethyl_acetate,diethyl_ether,dichloromethane,methanol,rf";

    private final StringBuilder text = new StringBuilder(HEADER).append('\n');

    /** A row as it is. */
    public TableText row(String row) {
        text.append(row).append('\n');
        return this;
    }

    /** A row of one pair. */
    public TableText row(int compound, String smiles, PairName pair, double percent, double rf) {
        double strong = percent / 100;
        StringBuilder row = new StringBuilder().append(compound).append(",,,").append(smiles);
        for (OpenSolvent solvent : OpenSolvent.values()) {
            double fraction = solvent.id().equals(pair.weak()) ? 1 - strong : 0;
            row.append(',').append(solvent.id().equals(pair.strong()) ? strong : fraction);
        }
        return row(row.append(',').append(rf).toString());
    }

    /** The measurements, read from a folder that it is written to. */
    public OpenMeasurements read(Path folder) throws IOException {
        Files.writeString(folder.resolve(MeasurementReader.FILE), text);
        return OpenMeasurements.read(folder);
    }
}
