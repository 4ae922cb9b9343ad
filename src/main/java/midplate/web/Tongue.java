package midplate.web;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.wire.Exchange;
import midplate.words.Language;
import org.jspecify.annotations.Nullable;

/** In which language an answer is given: the one that the request likes best among those spoken here, else English. */
final class Tongue {
    static final String ASKED = "Accept-Language";
    static final String SPOKEN = "Content-Language";

    private static final Pattern RANGE =
            Pattern.compile("\\s*([A-Za-z]{1,8}(?:-[A-Za-z0-9]{1,8})*)\\s*(?:;\\s*[qQ]=([01](?:\\.[0-9]{0,3})?)\\s*)?");
    private static final int MOST_RANGES = 50;

    private final Map<Language, Exchange> exchanges = new EnumMap<>(Language.class);

    /** An exchange in each language, all with one adviser. */
    Tongue(Exchange exchange) {
        for (Language language : Language.values()) {
            exchanges.put(language, exchange.in(language));
        }
    }

    /** The exchange in the language of a request; the answer's header says which. */
    Exchange of(Context ctx) {
        Language language = asked(ctx.header(ASKED));
        ctx.header(SPOKEN, language.tag());
        return in(language);
    }

    /** The exchange in a language. */
    Exchange in(Language language) {
        return exchanges.getOrDefault(language, exchanges.values().iterator().next());
    }

    /**
     * The language of a header like {@code de-AT,de;q=0.9,en;q=0.8}: the first one spoken here in the order of q, of the
     * header where q is equal. What is not of that form is passed over.
     */
    static Language asked(@Nullable String header) {
        if (header == null) {
            return Language.ENGLISH;
        }
        return Arrays.stream(header.split(",", MOST_RANGES))
                .map(Tongue::wish)
                .flatMap(Optional::stream)
                .filter(wish -> wish.weight() > 0)
                .sorted(Comparator.comparingDouble(Wish::weight).reversed())
                .map(Wish::language)
                .findFirst()
                .orElse(Language.ENGLISH);
    }

    private record Wish(Language language, double weight) {}

    private static Optional<Wish> wish(String range) {
        Matcher form = RANGE.matcher(range);
        if (!form.matches()) {
            return Optional.empty();
        }
        double weight = form.group(2) == null ? 1 : Double.parseDouble(form.group(2));
        return Language.byTag(form.group(1)).filter(any -> weight <= 1).map(language -> new Wish(language, weight));
    }
}
