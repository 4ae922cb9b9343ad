package midplate;

/** Starts Midplate from the command line; says which folder is missing when the jar was copied without its libraries. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and ends with its exit status.
     *
     * @param arguments the command and its options, such as {@code serve --port 0}
     */
    public static void main(String[] arguments) {
        if (Main.class.getResource("/picocli/CommandLine.class") == null) {
            System.err.println("The folder lib/ is missing beside midplate.jar: copy both, the jar and the folder lib/"
                    + " that the build left beside it, into one folder and start again.");
            System.exit(1);
        }
        System.exit(Commands.run(arguments));
    }
}
