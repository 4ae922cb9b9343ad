package midplate.benchmark;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How a figure is written in a table. */
enum FigureForm {
    RF("%.3f ± %.3f", 1),
    RF_DIFFERENCE("%+.4f ± %.4f", 1),
    PERCENT("%.1f ± %.1f %%", 100),
    PERCENT_DIFFERENCE("%+.1f ± %.1f %%", 100),
    SIGNED("%+.3f ± %.3f", 1),
    CORRELATION("%+.2f ± %.2f", 1),
    SAID("%.2f", 1),
    CAME("%.2f ± %.2f", 1);

    private static final String NONE = "–";

    private final String format;
    private final double factor;

    FigureForm(String format, double factor) {
        this.format = format;
        this.factor = factor;
    }

    /** The figure, with its standard error where that is known; a dash when there is no figure. */
    String text(@Nullable Figure figure) {
        if (figure == null || !Double.isFinite(figure.value())) {
            return NONE;
        }
        boolean alone = !Double.isFinite(figure.standardError());
        String form = alone ? format.replaceFirst(" ± %\\.\\df", "") : format;
        String text = String.format(Locale.ROOT, form, factor * figure.value(), factor * figure.standardError());
        return text.replace('-', '−');
    }

    /** How a difference of two such figures is written. */
    FigureForm ofDifference() {
        return switch (this) {
            case RF -> RF_DIFFERENCE;
            case PERCENT -> PERCENT_DIFFERENCE;
            case RF_DIFFERENCE, PERCENT_DIFFERENCE, SIGNED, CORRELATION, SAID, CAME -> SIGNED;
        };
    }

    /** The mean chance said, and the share that came true. */
    static String chance(@Nullable Figure said, @Nullable Figure came) {
        return SAID.text(said) + " → " + CAME.text(came);
    }
}
