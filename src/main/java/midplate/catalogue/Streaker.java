package midplate.catalogue;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import midplate.chemistry.Solvent;

/**
 * A functional group whose compounds tend to streak or tail on silica, and what helps against it.
 *
 * @param group id of the functional group
 * @param kind why it streaks
 * @param help what is added to the eluent; empty where nothing helps
 * @param source where this comes from
 * @param note what to know of the row
 */
public record Streaker(String group, Kind kind, Optional<Help> help, Source source, String note) {
    /**
     * What is added to an eluent.
     *
     * @param additive the solvent
     * @param leastPercent the least that is usual [% v/v]
     * @param mostPercent the most [% v/v]
     */
    public record Help(Solvent additive, double leastPercent, double mostPercent) {}

    /** Why a compound streaks. */
    public enum Kind {
        /** An acid, partly as its anion. */
        ACID("acid"),
        /** An acid so weak that it streaks now and then only. */
        WEAK_ACID("weak-acid"),
        /** A base, which the acid silica takes up. */
        BASE("base"),
        /** A base so weak that it tails now and then only. */
        WEAK_BASE("weak-base"),
        /** It binds traces of metal in the silica. */
        CHELATOR("chelator"),
        /** It changes on the plate. */
        BORONIC_ACID("boronic-acid"),
        /** Silica holds it very strongly as an acceptor of hydrogen bonds. */
        ACCEPTOR("acceptor");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** Its name in the file and in texts. */
        public String id() {
            return id;
        }

        static Map<String, Kind> byId() {
            return Arrays.stream(values()).collect(Collectors.toMap(Kind::id, Function.identity()));
        }
    }
}
