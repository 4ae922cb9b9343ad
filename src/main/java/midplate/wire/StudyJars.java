package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.notebook.Entered;
import midplate.notebook.JarAdditive;
import midplate.notebook.NextJar;

/** Reads what goes into the jars of a study: solvents, additives, and what is wanted of the next. */
final class StudyJars {
    static final List<String> NEXT =
            List.of("weak", "strong", "additive", "window", "windowKind", "apart", "amountMl", "jarDiameterMm");
    static final List<String> ADDITIVE = List.of("kind", "text");

    /** How a window is chosen. */
    static final List<String> WINDOW_KINDS = List.of("usual", "column", "own");

    private final List<String> solvents;
    private final List<String> additives;
    private final FaultList faults;

    StudyJars(SolventCatalogue catalogue, FaultList faults) {
        this.solvents = catalogue.solvents().stream().map(Solvent::id).toList();
        this.additives = additives(catalogue);
        this.faults = faults;
    }

    /** What an additive may be: none, one that helps against streaking, or one in a person's own words. */
    static List<String> additives(SolventCatalogue catalogue) {
        Stream<String> helping = catalogue.streakers().stream()
                .flatMap(streaker -> streaker.help().stream())
                .map(help -> help.additive().id())
                .distinct();
        return Stream.of(Stream.of("none"), helping, Stream.of("own"))
                .flatMap(kinds -> kinds)
                .toList();
    }

    /** The ids of all solvents. */
    List<String> solvents() {
        return solvents;
    }

    /** A solvent by its id. */
    String solvent(StudyFields fields, String name) {
        return fields.choice(name, solvents);
    }

    /** What is added. */
    JarAdditive additive(StudyFields fields) {
        return fields.any("additive")
                .flatMap(value -> StudyFields.of(fields.path("additive"), value, faults, ADDITIVE, List.of()))
                .map(additive -> new JarAdditive(additive.choice("kind", additives), additive.line("text")))
                .orElse(JarAdditive.NONE);
    }

    /** What is wanted of the next plate. */
    Optional<NextJar> next(String path, Json value, StudySpotReader spots) {
        return StudyFields.of(path, value, faults, NEXT, List.of()).map(fields -> {
            Optional<List<Json>> window = fields.two("window");
            return new NextJar(
                    solvent(fields, "weak"),
                    solvent(fields, "strong"),
                    additive(fields),
                    edge(fields, window, 0),
                    edge(fields, window, 1),
                    fields.choice("windowKind", WINDOW_KINDS),
                    fields.noneOrTwo("apart", spots.refer(fields, "apart")),
                    fields.entered("amountMl"),
                    fields.entered("jarDiameterMm"));
        });
    }

    private Entered edge(StudyFields fields, Optional<List<Json>> window, int which) {
        return window.map(edges -> StudyNumber.entered(fields.path("window[" + which + "]"), edges.get(which), faults))
                .orElse(Entered.NOTHING);
    }
}
