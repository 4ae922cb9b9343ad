package midplate.notebook;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who keeps a folder, as its lock file says; each part as far as it can be read.
 *
 * @param process id of the process, as the system counts
 * @param since when it took the folder
 * @param address where its page is
 */
record LockHolder(Optional<String> process, Optional<Instant> since, Optional<String> address) {
    /** The text ends before this place; the byte there is the one that is locked, so that the text can be read [bytes]. */
    static final int LOCKED_BYTE = 1 << 20;

    private static final Pattern PROCESS = Pattern.compile("(?m)^process ([0-9]{1,20})$");
    private static final Pattern SINCE = Pattern.compile("(?m)^since ([0-9T:.Z-]{10,40})$");
    private static final Pattern PAGE = Pattern.compile("(?m)^page (http://[a-z0-9.:]{1,60}/)$");

    /** This process, now. */
    static LockHolder me(Instant now) {
        return new LockHolder(
                Optional.of(Long.toString(ProcessHandle.current().pid())),
                Optional.of(now.truncatedTo(ChronoUnit.SECONDS)),
                Optional.empty());
    }

    LockHolder at(String page) {
        return new LockHolder(process, since, Optional.of(page));
    }

    String text() {
        StringBuilder text = new StringBuilder("Midplate keeps this folder.\n");
        process.ifPresent(id -> text.append("process ").append(id).append('\n'));
        since.ifPresent(when -> text.append("since ").append(when).append('\n'));
        address.ifPresent(page -> text.append("page ").append(page).append('\n'));
        return text.toString();
    }

    static LockHolder read(String text) {
        return new LockHolder(found(PROCESS, text), found(SINCE, text).flatMap(LockHolder::instant), found(PAGE, text));
    }

    private static Optional<String> found(Pattern line, String text) {
        Matcher matcher = line.matcher(text);
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }

    private static Optional<Instant> instant(String text) {
        try {
            return Optional.of(Instant.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
