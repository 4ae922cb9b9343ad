package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Student's distribution from a table")
class StudentTableTest {
    // Reference: Student's t with 5 degrees of freedom in Apache Commons Math (incomplete beta function).
    @Test
    void isStudentsDistributionBetweenAndBeyondItsPlaces() {
        TDistribution student = new TDistribution(5);
        for (double z = -90; z <= 90; z += 0.0137) {
            assertEquals(student.cumulativeProbability(z), StudentTable.below(z), 1.1e-8, "below " + z);
        }
    }

    @Test
    void endsAtNothingAndAtAll() {
        assertEquals(0, StudentTable.below(Double.NEGATIVE_INFINITY));
        assertEquals(1, StudentTable.below(Double.POSITIVE_INFINITY));
        assertTrue(Double.isNaN(StudentTable.below(Double.NaN)));
    }
}
