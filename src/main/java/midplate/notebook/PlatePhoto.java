package midplate.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A picture of a plate that was kept; the picture itself lies beside the study (see {@link KeptPhotos}), or in another folder.
 *
 * @param name which picture
 * @param light the light it was taken in
 */
public record PlatePhoto(PhotoName name, Light light) {
    /** The light a plate was seen in. */
    public enum Light {
        /** Ultraviolet at 254 nm: dark spots on a layer that glows. */
        UV_254,
        /** Ultraviolet at 366 nm: spots that glow on a dark layer. */
        UV_366,
        /** Light that eyes see. */
        DAYLIGHT;

        /** The word in studies: {@code uv-254}, {@code uv-366}, {@code daylight}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** All words, in the order of the lights. */
        public static List<String> ids() {
            return Arrays.stream(values()).map(Light::id).toList();
        }

        /** The light of that word, written exactly so; empty for any other. */
        public static Optional<Light> byId(String id) {
            return Arrays.stream(values())
                    .filter(light -> light.id().equals(id))
                    .findFirst();
        }
    }
}
