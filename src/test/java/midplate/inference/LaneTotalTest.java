package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sum over all ways on one lane, against listing every one of them; the weights are drawn. */
@DisplayName("The weight of all ways on a lane")
class LaneTotalTest {
    private static double[] drawn(Random random, int candidates) {
        return random.doubles(candidates, 0.01, 5).toArray();
    }

    private static List<LaneTotal.Place> places(Random random, int count, int candidates) {
        List<LaneTotal.Place> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double alike = i == 0 ? 1 : 0.08;
            places.add(
                    new LaneTotal.Place(0.01 * (i + 1), drawn(random, candidates), drawn(random, candidates), alike));
        }
        return places;
    }

    private static List<double[]> free(Random random, int count, int candidates) {
        List<double[]> free = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            free.add(drawn(random, candidates));
        }
        return free;
    }

    private static List<int[]> toldApart(int candidates) {
        List<int[]> units = new ArrayList<>();
        for (int i = 0; i < candidates; i++) {
            units.add(new int[] {i});
        }
        return units;
    }

    /** The sum by its definition: every candidate at every place. */
    private static double listed(int candidates, List<LaneTotal.Place> seen, List<double[]> free) {
        int places = seen.size() + free.size();
        double sum = 0;
        for (long way = 0; way < Math.pow(places, candidates); way++) {
            int[] at = new int[candidates];
            long left = way;
            for (int i = 0; i < candidates; i++) {
                at[i] = (int) (left % places);
                left /= places;
            }
            sum += weight(at, seen, free);
        }
        return sum;
    }

    private static double weight(int[] at, List<LaneTotal.Place> seen, List<double[]> free) {
        double weight = 1;
        for (int p = 0; p < seen.size(); p++) {
            int place = p;
            LaneTotal.Place here = seen.get(p);
            long there = Arrays.stream(at).filter(each -> each == place).count();
            weight *= there == 0 ? here.empty() : there == 1 ? 1 : 1 / here.alike();
            for (int i = 0; i < at.length; i++) {
                if (at[i] == p) {
                    weight *= there == 1 ? here.alone()[i] : here.shared()[i];
                }
            }
        }
        for (int i = 0; i < at.length; i++) {
            if (at[i] >= seen.size()) {
                weight *= free.get(at[i] - seen.size())[i];
            }
        }
        return weight;
    }

    @ParameterizedTest
    @CsvSource({"0, 2, 1", "1, 0, 1", "1, 1, 1", "2, 1, 1", "3, 2, 1", "4, 3, 2", "5, 2, 3", "6, 4, 1"})
    void isTheSumOverEveryWay(int candidates, int seen, int free) {
        Random random = new Random(7);
        List<LaneTotal.Place> places = places(random, seen, candidates);
        List<double[]> others = free(random, free, candidates);
        double listed = listed(candidates, places, others);
        assertEquals(1, LaneTotal.of(toldApart(candidates), places, others) / listed, 1e-12);
    }

    // Own algebra: names that mean nothing may be exchanged, so ways in which they follow the places, times the
    // exchanges of each, weigh what all ways weigh.
    @ParameterizedTest
    @CsvSource({"3, 3, 2", "4, 3, 1", "5, 2, 2", "6, 3, 1"})
    void isTheSameWhereNamesFollowThePlaces(int candidates, int seen, int free) {
        Random random = new Random(11);
        List<LaneTotal.Place> places = new ArrayList<>();
        for (LaneTotal.Place place : places(random, seen, candidates)) {
            Arrays.fill(place.alone(), 1, candidates, place.alone()[1]);
            Arrays.fill(place.shared(), 1, candidates, place.shared()[1]);
            places.add(place);
        }
        List<double[]> others = free(random, free, candidates);
        others.forEach(weights -> Arrays.fill(weights, 1, candidates, weights[1]));
        int[] alike = new int[candidates - 1];
        Arrays.setAll(alike, i -> i + 1);
        double listed = listed(candidates, places, others);
        assertEquals(1, LaneTotal.of(List.of(new int[] {0}, alike), places, others) / listed, 1e-12);
        assertEquals(1, LaneTotal.of(List.of(alike, new int[] {0}), places, others) / listed, 1e-12);
    }

    @Test
    void twelveCandidatesToldApartAreFeasibleAndThirteenAreNot() {
        assertTrue(LaneTotal.isFeasible(toldApart(12)));
        assertFalse(LaneTotal.isFeasible(toldApart(13)));
        assertTrue(LaneTotal.isFeasible(List.of(new int[50])));
    }
}
