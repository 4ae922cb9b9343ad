package midplate.web;

import io.javalin.http.Context;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.notebook.StudyTag;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Under which condition a study is to be kept: one strong tag in {@code If-Match} for the state that it takes the place of, or a star in
 * {@code If-None-Match} for a study that is new. Anything looser could write over what somebody else did.
 *
 * @param expected the state that is to be there; empty where there is to be none
 */
record Condition(Optional<StudyTag> expected) {
    static final String MATCH = "If-Match";
    static final String NONE_MATCH = "If-None-Match";

    private static final Pattern STRONG = Pattern.compile("\"([^\"]*)\"");
    private static final String STAR = "*";
    private static final int UNSAID = 428;
    private static final int BAD = 400;

    /** The condition of a request that may also make a study. */
    static Condition of(Context ctx) {
        List<String> match = values(ctx, MATCH);
        List<String> none = values(ctx, NONE_MATCH);
        if (match.isEmpty() && none.isEmpty()) {
            throw unsaid(Message.of("allowed.tag-or-new"));
        }
        if (none.isEmpty()) {
            return new Condition(Optional.of(tag(match)));
        }
        if (!match.isEmpty() || none.size() != 1 || !none.get(0).equals(STAR)) {
            throw bad(
                    NONE_MATCH,
                    String.join(", ", none),
                    match.isEmpty() ? Allowed.words(STAR) : Message.of("allowed.one-condition"));
        }
        return new Condition(Optional.empty());
    }

    /** The state that a request expects, which must be one. */
    static StudyTag expected(Context ctx) {
        List<String> match = values(ctx, MATCH);
        List<String> none = values(ctx, NONE_MATCH);
        if (!none.isEmpty()) {
            throw bad(NONE_MATCH, String.join(", ", none), form());
        }
        if (match.isEmpty()) {
            throw unsaid(form());
        }
        return tag(match);
    }

    private static StudyTag tag(List<String> match) {
        String came = String.join(", ", match);
        Matcher strong = STRONG.matcher(came);
        return Optional.of(strong)
                .filter(Matcher::matches)
                .flatMap(one -> StudyTag.in(one.group(1)))
                .orElseThrow(() -> bad(MATCH, came, form()));
    }

    private static List<String> values(Context ctx, String name) {
        return Collections.list(ctx.req().getHeaders(name)).stream()
                .map(String::strip)
                .toList();
    }

    private static Message form() {
        return Message.of("allowed.one-tag", "header", MATCH);
    }

    private static Turned unsaid(Message allowed) {
        return new Turned(
                UNSAID,
                new Refusal(
                        MATCH,
                        Message.of("fault.no-condition"),
                        "nothing",
                        allowed,
                        Message.of("todo.send-tag-of-study")));
    }

    private static Turned bad(String header, String came, Message allowed) {
        return new Turned(
                BAD,
                new Refusal(
                        header,
                        Message.of("fault.condition-not-taken"),
                        Guard.shown(came),
                        allowed,
                        Message.of("todo.send-tag-of-study")));
    }
}
