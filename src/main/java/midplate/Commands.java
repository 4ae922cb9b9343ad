package midplate;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import midplate.batch.BatchCommand;
import midplate.benchmark.BenchmarkCommand;
import midplate.terminal.AdviseCommand;
import midplate.terminal.CalibrateCommand;
import midplate.terminal.ColumnCommand;
import midplate.terminal.Complaint;
import midplate.terminal.ReadingCommand;
import midplate.terminal.SeeingCommand;
import midplate.terminal.StrengthCommand;
import midplate.web.ServeCommand;
import midplate.wire.Exchange;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands that Midplate knows; without one it lists them. */
@Command(
        name = "midplate",
        mixinStandardHelpOptions = true,
        version = "midplate " + Exchange.VERSION,
        description = "From the Rf readings of a thin-layer plate to the next eluent ratio, its chance, and why.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ServeCommand.class,
            BatchCommand.class,
            AdviseCommand.class,
            ColumnCommand.class,
            ReadingCommand.class,
            SeeingCommand.class,
            StrengthCommand.class,
            CalibrateCommand.class,
            BenchmarkCommand.class,
            CommandLine.HelpCommand.class
        })
final class Commands implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before run()
    private CommandSpec spec;

    private Commands() {}

    /** Runs one command; the result is the exit status: 0 done, 2 a wrong command line, 1 anything else. */
    static int run(String... arguments) {
        return run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), arguments);
    }

    /** The same with other places to write to. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        int status = commandLine()
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((failure, command, parsed) -> Complaint.tell(failure, command.getErr()))
                .execute(arguments);
        out.flush();
        err.flush();
        return status;
    }

    /** The commands with their options. */
    static CommandLine commandLine() {
        return new CommandLine(new Commands());
    }

    /** Whatever the machine's language: the texts are UTF-8. */
    private static PrintWriter utf8(FileDescriptor to) {
        return new PrintWriter(new FileOutputStream(to), true, StandardCharsets.UTF_8);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say which command to run.");
    }
}
