package midplate.batch;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import midplate.wire.Exchange;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code batch}: answers requests in JSON, one a line, from standard input to standard output. */
@Command(
        name = "batch",
        mixinStandardHelpOptions = true,
        description = "Answers requests in JSON, one a line, from standard input to standard output.")
public final class BatchCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Option(
            names = "--calibration",
            paramLabel = "DIR",
            description = "Take the strength curves from this folder instead of those packed with the program.")
    private @Nullable Path calibration;

    @Override
    public Integer call() {
        Exchange exchange = Exchange.of(calibration);
        Batch batch = new Batch(exchange, spec.commandLine().getErr());
        // the bare descriptors: a PrintStream would hide that writing failed
        return batch.run(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out));
    }
}
