package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import midplate.catalogue.MeasuredPair.Bell;
import midplate.catalogue.MeasuredPair.Traits;
import midplate.catalogue.PairLink;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Own algebra: p(c, s, t) = p(c)·p(s, t | c), of which a link exchanges the first. */
@DisplayName("What is known of traits before a reading")
class TraitPriorTest {
    /** Two classes of compounds and a wide curve; in the second class s and t are larger. */
    private static final TraitPrior PRIOR = TraitPrior.of(new Traits(List.of(
            new Bell(0.6, -1, 0.8, -0.8, 0.2, 0.01, 0.05, 0.01, 0.01, 0.6),
            new Bell(0.39, 1.5, 1.2, 0.9, 0.2, 0.01, -0.05, 0.01, 0.01, 0.6),
            new Bell(0.01, 0, 1, 0, 12, 0, 0, 0.16, 0, 1))));

    /** The weight of each c, by its place on the grid. */
    private static double[] spreadOfC(TraitPrior prior) {
        TraitCloud cloud = prior.cloud();
        double[] spread = new double[prior.grid().cCount()];
        for (int i = 0; i < cloud.size(); i++) {
            spread[place(prior, cloud.c(i))] += cloud.weight(i);
        }
        return spread;
    }

    private static int place(TraitPrior prior, double c) {
        return (int) Math.round((c - prior.grid().cAt(0)) / prior.grid().cStep());
    }

    /** For each s and t that a spot of a c may have, its share. */
    private static Map<List<Double>, Double> othersAt(TraitPrior prior, int iC) {
        TraitCloud cloud = prior.cloud();
        Map<List<Double>, Double> shares = new HashMap<>();
        double all = spreadOfC(prior)[iC];
        for (int i = 0; i < cloud.size(); i++) {
            if (place(prior, cloud.c(i)) == iC) {
                shares.merge(List.of(cloud.s(i), cloud.t(i)), cloud.weight(i) / all, Double::sum);
            }
        }
        return shares;
    }

    // Of a cloud, points lighter than a ten-thousandth of the heaviest are left out.
    private static void assertSameAtEachC(TraitPrior one, TraitPrior other) {
        double[] spread = spreadOfC(other);
        int compared = 0;
        for (int iC = 0; iC < spread.length; iC++) {
            Map<List<Double>, Double> ofOne = othersAt(one, iC);
            Map<List<Double>, Double> ofOther = othersAt(other, iC);
            for (List<Double> point : ofOne.keySet()) {
                if (spread[iC] > 0.01 && spreadOfC(one)[iC] > 0.01 && ofOther.containsKey(point)) {
                    assertEquals(ofOne.get(point), ofOther.get(point), 0.01 * ofOne.get(point) + 0.002);
                    compared++;
                }
            }
        }
        assertTrue(compared > 50, "compared " + compared);
    }

    @Test
    void anotherSpreadOfCKeepsHowTheOthersAreSpreadAtEachC() {
        double[] density = new double[PRIOR.grid().cCount()];
        double sum = 0;
        for (int iC = 0; iC < density.length; iC++) {
            double away = (PRIOR.grid().cAt(iC) - 0.7) / 0.8;
            density[iC] = 3 * Math.exp(-0.5 * away * away);
            sum += density[iC];
        }
        TraitPrior moved = PRIOR.withSpreadOfC(density);
        assertSameAtEachC(PRIOR, moved);
        double[] spread = spreadOfC(moved);
        for (int iC = 0; iC < density.length; iC++) {
            assertEquals(density[iC] / sum, spread[iC], 1e-3);
        }
    }

    // A spot at c = −1 or 1.5 over there is, by the line, one of the first or the second class here.
    @Test
    void aLinkSaysTheOtherTraitsOfTheClassItLeadsTo() {
        LinkedPair link = new LinkedPair(new PairLink("a", "b", 0.25, 0.5, 0.2, 9, -5, 5), PRIOR);
        TraitPrior first = link.prior(at(-2.5));
        TraitPrior second = link.prior(at(2.5));
        assertSameAtEachC(PRIOR, first);
        assertSameAtEachC(PRIOR, second);
        assertEquals(-1, first.cloud().meanC(), 0.02);
        assertEquals(1.5, second.cloud().meanC(), 0.02);
        assertEquals(0.2, Math.sqrt(first.varianceC()), 0.01, "the link's own scatter");
        assertEquals(0.8, first.cloud().meanS(), 0.02);
        assertEquals(1.2, second.cloud().meanS(), 0.02);
        assertEquals(-0.8, meanT(first.cloud()), 0.05);
        assertEquals(0.9, meanT(second.cloud()), 0.05);
    }

    private static TraitCloud at(double c) {
        return TraitCloud.of(
                new TraitCloud.Points(new double[] {c}, new double[] {1}, new double[] {0}, new double[] {1}));
    }

    private static double meanT(TraitCloud cloud) {
        double mean = 0;
        for (int i = 0; i < cloud.size(); i++) {
            mean += cloud.weight(i) * cloud.t(i);
        }
        return mean;
    }
}
