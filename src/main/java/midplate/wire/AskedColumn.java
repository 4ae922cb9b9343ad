package midplate.wire;

import java.util.List;
import midplate.column.ColumnQuestion;

/**
 * A request for the plan of a column, read without a fault.
 *
 * @param asked the sample, as in a request for advice
 * @param question what is asked
 * @param predictAt shares of the stronger solvent to foretell on the same bed [% v/v]
 */
record AskedColumn(Asked asked, ColumnQuestion question, List<Double> predictAt) {
    AskedColumn {
        predictAt = List.copyOf(predictAt);
    }
}
