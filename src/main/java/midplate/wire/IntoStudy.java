package midplate.wire;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudySpot;

/** The study that plates are read into, or a new one: which ids are taken, and what goes without saying. */
final class IntoStudy {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,40}");

    private final Optional<Study> study;
    private final Set<String> taken = new HashSet<>();
    private final Map<String, StudySpot> spots = new LinkedHashMap<>();
    private final Map<String, String> idsByName = new LinkedHashMap<>();
    private final Map<Character, Integer> last = new LinkedHashMap<>();

    IntoStudy(Optional<Study> study) {
        this.study = study;
        study.ifPresent(into -> {
            into.spots().forEach(spot -> {
                spots.put(spot.id(), spot);
                idsByName.putIfAbsent(spot.name().strip(), spot.id());
                taken.add("s " + spot.id());
            });
            into.plates().forEach(plate -> {
                taken.add("p " + plate.id());
                plate.lanes().forEach(lane -> {
                    taken.add("l " + lane.id());
                    lane.readings().forEach(reading -> taken.add("r " + reading.id()));
                });
            });
            into.advices()
                    .forEach(
                            advice -> { // it may name what is gone, and must not come to mean something new
                                advice.after().forEach(plate -> taken.add("p " + plate));
                                advice.apart().forEach(spot -> taken.add("s " + spot));
                                advice.spots().forEach(spot -> taken.add("s " + spot.spot()));
                            });
        });
    }

    Optional<Study> study() {
        return study;
    }

    /** The last plate, which the next one is cut like. */
    Optional<StudyPlate> lastPlate() {
        return study.flatMap(into -> into.plates().isEmpty()
                ? Optional.empty()
                : Optional.of(into.plates().get(into.plates().size() - 1)));
    }

    /** An id that nothing of its kind has yet: the one wished for where it may be. */
    String id(char kind, String wished) {
        if (ID.matcher(wished).matches() && taken.add(kind + " " + wished)) {
            return wished;
        }
        int number = last.getOrDefault(kind, 0);
        String id;
        do {
            number++;
            id = kind + Integer.toString(number);
        } while (!taken.add(kind + " " + id));
        last.put(kind, number);
        return id;
    }

    /** The compound of a name, a new one where there was none. */
    String spot(String name) {
        String known = idsByName.get(name);
        if (known != null) {
            return known;
        }
        String id = id('s', "");
        spots.put(id, new StudySpot(id, name, Optional.empty()));
        idsByName.put(name, id);
        return id;
    }

    /** How many compounds there would be with these. */
    int countWith(List<String> names) {
        return spots.size()
                + (int) names.stream()
                        .distinct()
                        .filter(name -> !idsByName.containsKey(name))
                        .count();
    }

    List<StudySpot> spots() {
        return List.copyOf(spots.values());
    }
}
