package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.catalogue.HrfSystem;
import midplate.catalogue.HrfSystems;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** What keeps hRf from being corrected, each with its place in the request. */
public final class HrfFaults {
    private static final double MOST = 100;

    private final HrfQuestion question;
    private final List<Refusal> faults = new ArrayList<>();

    private HrfFaults(HrfQuestion question) {
        this.question = question;
    }

    /** All of them; empty where nothing is wrong. */
    public static List<Refusal> in(HrfQuestion question, HrfSystems systems) {
        HrfFaults finder = new HrfFaults(question);
        Optional<HrfSystem> system = question.system().flatMap(systems::byId);
        if (question.system().isPresent() && system.isEmpty()) {
            finder.fault(
                    "system",
                    "hrf.unknown-system",
                    question.system().get(),
                    Allowed.words(systems.all().stream().map(HrfSystem::id).toList()),
                    "hrf.todo-system");
            return finder.faults;
        }
        finder.standards(system);
        for (int i = 0; i < question.measured().size(); i++) {
            finder.inside("measured[" + i + "].hrf", question.measured().get(i).hrf());
        }
        if (question.measured().isEmpty()) {
            finder.fault(
                    "measured", "hrf.nothing-measured", "[]", Message.of("allowed.one-or-more"), "hrf.todo-measured");
        }
        if (finder.faults.isEmpty()) {
            finder.order(HrfCorrection.pairs(question, system));
        }
        return List.copyOf(finder.faults);
    }

    private void fault(String field, String reason, String came, Message allowed, String todo) {
        faults.add(new Refusal(field, Message.of(reason), came, allowed, Message.of(todo)));
    }

    private void inside(String field, double hrf) {
        if (!(hrf >= 0 && hrf <= MOST)) {
            fault(field, "hrf.out-of-range", Allowed.number(hrf), Allowed.closed(0, MOST), "hrf.todo-hundred");
        }
    }

    private void standards(Optional<HrfSystem> system) {
        if (question.standards().isEmpty()) {
            fault("standards", "hrf.no-standard", "[]", Message.of("allowed.one-or-more"), "hrf.todo-standard");
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < question.standards().size(); i++) {
            HrfQuestion.Standard standard = question.standards().get(i);
            String at = "standards[" + i + "].";
            system.ifPresent(known -> name(at, standard.name(), known));
            if (!seen.add(standard.name())) {
                fault(
                        at + "name",
                        "hrf.standard-twice",
                        standard.name(),
                        Message.of("allowed.own-name"),
                        "hrf.todo-once");
            }
            inside(at + "measured", standard.measured());
            if (system.isEmpty()) {
                OptionalDouble published = standard.published();
                if (published.isEmpty()) {
                    fault(at + "published", "hrf.no-published", "", Allowed.closed(0, MOST), "hrf.todo-published");
                } else {
                    inside(at + "published", published.getAsDouble());
                }
            }
        }
    }

    private void name(String at, String name, HrfSystem system) {
        List<String> names =
                system.standards().stream().map(HrfSystem.HrfStandard::name).toList();
        if (!names.contains(name)) {
            fault(at + "name", "hrf.not-of-system", name, Allowed.words(names), "hrf.todo-name");
        }
    }

    /** By growing published values the measured ones must grow, too, and both must lie off the lines. */
    private void order(List<HrfCorrection.Pair> pairs) {
        HrfCorrection.Pair last = new HrfCorrection.Pair("", 0, 0);
        for (HrfCorrection.Pair pair : pairs.stream()
                .sorted(Comparator.comparingDouble(HrfCorrection.Pair::published))
                .toList()) {
            boolean grows = pair.measured() > last.measured() && pair.published() > last.published();
            if (!(grows && pair.measured() < MOST && pair.published() < MOST)) {
                int place = question.standards().stream()
                        .map(HrfQuestion.Standard::name)
                        .toList()
                        .indexOf(pair.name());
                fault(
                        "standards[" + place + "].measured",
                        "hrf.standards-out-of-order",
                        Allowed.number(pair.measured()),
                        Allowed.open(Allowed.number(last.measured()), Allowed.number(MOST)),
                        "hrf.todo-order");
            }
            last = pair;
        }
    }
}
