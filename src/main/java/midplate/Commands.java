package midplate;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands that Midplate knows; without one it lists them. */
@Command(
        name = "midplate",
        mixinStandardHelpOptions = true,
        version = "midplate 0.1.0",
        description = "From the Rf readings of a thin-layer plate to the next eluent ratio, its chance, and why.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = CommandLine.HelpCommand.class)
final class Commands implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before run()
    private CommandSpec spec;

    private Commands() {}

    /** Runs one command; the result is the exit status: 0 done, 2 a wrong command line, 1 anything else. */
    static int run(String... arguments) {
        return new CommandLine(new Commands()).execute(arguments);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say which command to run.");
    }
}
