package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import midplate.inference.PairModel;
import midplate.inference.PlateRun;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.Digits;
import midplate.words.Message;

/** Plates that cannot both be right: a spot that runs lower in a stronger eluent, or apart in the same one. */
final class Contradictions {
    /** So many standard deviations of the difference are more than chance; common practice, no source. */
    private static final double TOO_FAR = 2.5;

    private Contradictions() {}

    static List<Message> in(List<PlateRun> plates, List<String> spots, PairModel model, Setting setting) {
        List<Message> found = new ArrayList<>();
        for (String spot : spots) {
            for (int i = 0; i < plates.size(); i++) {
                for (int j = i + 1; j < plates.size(); j++) {
                    boolean inOrder = plates.get(i).percent() <= plates.get(j).percent();
                    compare(spot, plates.get(inOrder ? i : j), plates.get(inOrder ? j : i), model, setting, found);
                }
            }
        }
        return found;
    }

    private static void compare(
            String spot, PlateRun weaker, PlateRun stronger, PairModel model, Setting setting, List<Message> found) {
        Reading low = weaker.readings().get(spot);
        Reading high = stronger.readings().get(spot);
        if (low == null || high == null) {
            return;
        }
        double scatter = Math.hypot(
                model.scatter(weaker.percent(), low.rf(), setting),
                model.scatter(stronger.percent(), high.rf(), setting));
        double fall = fall(low, high);
        boolean same = weaker.percent() == stronger.percent();
        if (same && Math.max(fall, fall(high, low)) > TOO_FAR * scatter) {
            found.add(Message.of(
                    "advice.readings-differ",
                    "spot",
                    spot,
                    "percent",
                    Digits.percent(weaker.percent()),
                    "one",
                    low.rf(),
                    "other",
                    high.rf()));
        } else if (!same && fall > TOO_FAR * scatter) {
            found.add(Message.of(
                    "advice.runs-backwards",
                    "spot",
                    spot,
                    "weakPercent",
                    Digits.percent(weaker.percent()),
                    "weakRf",
                    low.rf(),
                    "strongPercent",
                    Digits.percent(stronger.percent()),
                    "strongRf",
                    high.rf()));
        }
    }

    /** By how much the first Rf certainly exceeds the second [1]; a bound that allows otherwise gives 0 or less. */
    private static double fall(Reading first, Reading second) {
        boolean open = first.limit() == Limit.AT_START || second.limit() == Limit.AT_FRONT;
        return open ? 0 : first.rf() - second.rf();
    }
}
