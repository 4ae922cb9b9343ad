package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import midplate.lesson.SurfacePicture.Solute;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Sets the balance that published energies give each compound, {@code S⁰ − A_s·ε}, against the order in which the model lets them move, and
 * says where the two do not agree.
 *
 * @see SoluteSums#balance(double)
 * @see "Snyder1968"
 */
final class SurfaceBalances {
    /** Balances nearer than this are shown alike [1]. */
    private static final double ALIKE = 0.01;

    /** Shares of time nearer than this are no order [1]. */
    private static final double SAME_TIME = 0.005;

    private final int now;
    private final double strength;
    /** Those with a balance, the largest first. */
    private final List<Solute> weighed;
    /** Those without. */
    private final List<Solute> unweighed;

    private SurfaceBalances(SurfacePicture picture) {
        this.now = picture.placeOf(picture.now());
        this.strength = picture.shares().get(now).strength();
        this.weighed = picture.solutes().stream()
                .filter(solute -> solute.sums().balance(strength).isPresent())
                .sorted(Comparator.comparingDouble((Solute solute) -> -balance(solute)))
                .toList();
        this.unweighed = picture.solutes().stream()
                .filter(solute -> solute.sums().balance(strength).isEmpty())
                .toList();
    }

    static SurfaceBalances of(SurfacePicture picture) {
        return new SurfaceBalances(picture);
    }

    /** The balances, whether they give the model's order, and of which compounds none can be drawn. */
    List<Message> sentences() {
        List<Message> said = new ArrayList<>();
        if (!weighed.isEmpty()) {
            said.add(Message.of(
                    "lesson.why-balances",
                    "strength",
                    strength,
                    "balances",
                    Allowed.list(weighed.stream().map(this::drawn).toList())));
        }
        if (weighed.size() > 1) {
            said.addAll(compared());
        }
        if (weighed.stream().anyMatch(solute -> solute.sums().polarGroups() > 1)) {
            said.add(Message.of("lesson.why-sum"));
        }
        if (!unweighed.isEmpty()) {
            List<Message> names = unweighed.stream()
                    .map(solute -> Allowed.words(solute.name()))
                    .toList();
            said.add(Message.of("lesson.why-no-balance", "names", Allowed.list(names)));
        }
        return said;
    }

    private Message drawn(Solute solute) {
        double energy = solute.sums().energy().orElseThrow();
        double push = solute.sums().area().orElseThrow() * strength;
        return Message.of(
                "lesson.why-balance", "name", solute.name(), "energy", energy, "push", push, "balance", energy - push);
    }

    /** Pair by pair, since one compound out of place does not put the others in doubt. */
    private List<Message> compared() {
        List<Message> other = new ArrayList<>();
        List<Message> alike = new ArrayList<>();
        for (int i = 0; i < weighed.size(); i++) {
            for (int j = i + 1; j < weighed.size(); j++) {
                compare(weighed.get(i), weighed.get(j), other, alike);
            }
        }
        List<Message> said = new ArrayList<>();
        if (!other.isEmpty()) {
            said.add(Message.of("lesson.why-differs", "pairs", Allowed.list(other)));
        }
        if (!alike.isEmpty()) {
            said.add(Message.of("lesson.why-alike", "pairs", Allowed.list(alike)));
        }
        return said.isEmpty() ? List.of(Message.of("lesson.why-agrees")) : said;
    }

    /** The first has the larger balance, or the same. */
    private void compare(Solute more, Solute less, List<Message> other, List<Message> alike) {
        double gap = balance(more) - balance(less);
        double time = more.adsorbed(now) - less.adsorbed(now);
        if (Math.abs(time) < SAME_TIME) {
            return;
        }
        if (gap < ALIKE) {
            alike.add(Message.of("lesson.why-alike-pair", "one", more.name(), "other", less.name()));
        } else if (time < 0) {
            other.add(Message.of("lesson.why-differs-pair", "later", more.name(), "sooner", less.name()));
        }
    }

    private double balance(Solute solute) {
        return solute.sums().balance(strength).orElseThrow();
    }
}
