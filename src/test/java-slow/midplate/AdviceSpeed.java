package midplate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import midplate.advice.Advice;
import midplate.advice.Adviser;
import midplate.advice.Curves;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** How long an advice takes: three spots after three plates; the readings are invented. Started by {@link #main}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AdviceSpeed {
    /** The setting asked about. */
    @Param({"AUTOMATED", "BENCH"})
    public Setting setting;

    private Adviser adviser;
    private Question question;
    private Solvent hexane;
    private Solvent acetate;
    private int asked;

    /** Made by the measuring library. */
    public AdviceSpeed() {}

    /** The question, with the tables of its window not yet made. */
    @Setup
    public void ask() {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        adviser = Adviser.builtIn(catalogue);
        hexane = catalogue.solvent("hexane");
        acetate = catalogue.solvent("ethyl acetate");
        question = question(0);
    }

    private Question question(double more) {
        return new Question(
                Sorbent.SILICA,
                hexane,
                acetate,
                Optional.empty(),
                List.of("A", "B", "C"),
                List.of(
                        run(5, 0.04 + more, 0.1 + more, 0.2 + more),
                        run(15, 0.14 + more, 0.27 + more, 0.42 + more),
                        run(30, 0.3 + more, 0.45 + more, 0.6 + more)),
                Window.USUAL,
                setting,
                Glassware.USUAL);
    }

    private Run run(double percent, double a, double b, double c) {
        return new Run(
                Eluent.of(Sorbent.SILICA, hexane, acetate, percent),
                Map.of("A", Reading.of(a), "B", Reading.of(b), "C", Reading.of(c)));
    }

    /** The same for readings that were not asked about before: nothing of them is kept. */
    @Benchmark
    public Advice adviceToNewReadings() {
        return adviser.advise(question(1e-7 * ++asked));
    }

    /** What to pour next, and why; the same readings each time. */
    @Benchmark
    public Advice advice() {
        return adviser.advise(question);
    }

    /** The curves of a page. */
    @Benchmark
    public Curves curves() {
        return adviser.curves(question);
    }

    /** Measures; the class path holds the compiled tests of profile {@code slow}. */
    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(AdviceSpeed.class.getSimpleName())
                        .build())
                .run();
    }
}
