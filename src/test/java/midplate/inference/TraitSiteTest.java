package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Own algebra of normal curves. */
@DisplayName("What readings say by themselves")
class TraitSiteTest {
    @Test
    void ofOneTraitIsTheReadingThatLeadsFromBeforeToAfter() {
        // before 1 ± 2, read 3 ± 1: after (1/4 + 3)/(1/4 + 1) = 2.6 with variance 0.8
        TraitSite site = TraitSite.between(moments(1, 4), moments(2.6, 0.8));
        assertEquals(1, site.precision().getEntry(0, 0), 1e-9);
        assertEquals(3, site.pull().getEntry(0), 1e-9);
    }

    @Test
    void thatWidenedSayNothingOfTheWidthAndStillMove() {
        TraitSite site = TraitSite.between(moments(0, 1), moments(0.5, 1.5));
        assertEquals(0, site.precision().getEntry(0, 0));
        assertEquals(0.5, site.pull().getEntry(0), 1e-9);
    }

    @Test
    void ofTwoTraitsLeadsBackToTheMiddleAfter() {
        Moments before = new Moments(new double[] {0, 1}, new double[][] {{2, 0.1}, {0.1, 0.04}});
        Moments after = new Moments(new double[] {0.7, 1.1}, new double[][] {{0.3, -0.02}, {-0.02, 0.03}});
        TraitSite site = TraitSite.between(before, after);
        double[] middle = TraitSite.inverse(site.precision().add(TraitSite.inverse(before.matrix())))
                .operate(site.pull()
                        .add(TraitSite.inverse(before.matrix())
                                .operate(new org.apache.commons.math3.linear.ArrayRealVector(before.mean()))))
                .toArray();
        assertArrayEquals(after.mean(), middle, 1e-9);
        assertTrue(site.precision().getEntry(0, 0) > 0);
    }

    private static Moments moments(double mean, double variance) {
        return new Moments(new double[] {mean}, new double[][] {{variance}});
    }
}
