package midplate.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.catalogue.GroupDifference;
import midplate.catalogue.JointTraits;
import org.apache.commons.math3.stat.StatUtils;

/** Fits how the traits of compounds go together over all pairs, and what their groups do in one pair beyond another. */
final class AcrossCalibration {
    private static final int FEWEST_COMMON = 5;
    /** Outside the middle 96 of 100 compounds nothing is said of another pair. */
    private static final double OUTER_PERCENT = 2;

    private final Map<String, Compared> pairs;
    private final Optional<GroupCalibration> groups;

    private AcrossCalibration(Map<String, Compared> pairs, Optional<GroupCalibration> groups) {
        this.pairs = pairs;
        this.groups = groups;
    }

    /**
     * Fits all of it.
     *
     * @param pairs the compounds of each pair, by its id
     * @param groups fits what groups do; empty where structures are not to count
     */
    static JointTraits fit(Map<String, Compared> pairs, Optional<GroupCalibration> groups) {
        return new AcrossCalibration(pairs, groups).run();
    }

    private JointTraits run() {
        Map<String, Moments> spreads = new LinkedHashMap<>();
        Map<String, Map<Series, TraitSite>> sites = new LinkedHashMap<>();
        pairs.forEach((pair, compared) -> {
            spreads.put(pair, compared.spread());
            sites.put(pair, compared.sites());
        });
        JointTraits plain = JointFit.fit(spreads, sites);
        JointNormal normal = JointNormal.of(plain);
        List<JointTraits.Reach> reaches = new ArrayList<>();
        WidthFit width = new WidthFit();
        List<GroupDifference> differences = new ArrayList<>();
        for (String from : pairs.keySet()) {
            for (String to : pairs.keySet()) {
                List<Series> common = from.equals(to) ? List.of() : common(from, to);
                if (common.size() >= FEWEST_COMMON) {
                    reaches.add(reach(from, to, common));
                    LinkedPair link = normal.link(from, to);
                    Moments all = normal.of(to);
                    for (Series series : common) {
                        width.add(
                                link,
                                all,
                                compared(from).of(series),
                                compared(to).of(series));
                    }
                    groups.flatMap(fit -> difference(fit, from, to, common, link))
                            .ifPresent(differences::add);
                }
            }
        }
        return new JointTraits(
                plain.axes(), plain.means(), plain.covariance(), reaches, width.likeliest(), differences);
    }

    private List<Series> common(String from, String to) {
        return compared(from).told().keySet().stream()
                .filter(compared(to).told()::containsKey)
                .toList();
    }

    private Compared compared(String pair) {
        Compared compared = pairs.get(pair);
        if (compared == null) {
            throw new IllegalArgumentException("pair " + pair + "; allowed: " + pairs.keySet());
        }
        return compared;
    }

    private JointTraits.Reach reach(String from, String to, List<Series> common) {
        double[] c = common.stream()
                .mapToDouble(series -> compared(from).of(series).mean()[0])
                .toArray();
        return new JointTraits.Reach(
                from,
                to,
                common.size(),
                StatUtils.percentile(c, OUTER_PERCENT),
                StatUtils.percentile(c, 100 - OUTER_PERCENT));
    }

    private Optional<GroupDifference> difference(
            GroupCalibration fit, String from, String to, List<Series> common, LinkedPair link) {
        double[] away = new double[common.size()];
        double[] variance = new double[common.size()];
        for (int i = 0; i < away.length; i++) {
            Moments here = compared(from).of(common.get(i));
            Moments there = compared(to).of(common.get(i));
            away[i] = there.mean()[0] - link.meanC(here);
            variance[i] = there.covariance()[0][0] + link.carriedC(here);
        }
        return fit.difference(from, to, common, away, variance);
    }
}
