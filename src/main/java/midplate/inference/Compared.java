package midplate.inference;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The compounds of one pair, ready to be compared with those of others.
 *
 * @param spread what all of them are like, as one normal curve
 * @param told what each is once read, by series
 */
record Compared(Moments spread, Map<Series, Moments> told) {
    static Compared of(List<Series> series, PairFit fit) {
        Map<Series, Moments> told = new TreeMap<>();
        for (int i = 0; i < series.size(); i++) {
            told.put(series.get(i), fit.told().get(i));
        }
        return new Compared(fit.spread(), told);
    }

    /** What a compound is once read; one that was not is refused. */
    Moments of(Series series) {
        Moments each = told.get(series);
        if (each == null) {
            throw new IllegalArgumentException("series " + series + "; allowed: those read in this pair");
        }
        return each;
    }

    /** What the readings of each say by themselves. */
    Map<Series, TraitSite> sites() {
        Map<Series, TraitSite> sites = new TreeMap<>();
        told.forEach((series, each) -> sites.put(series, TraitSite.between(spread, each)));
        return sites;
    }
}
