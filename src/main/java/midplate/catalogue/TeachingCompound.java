package midplate.catalogue;

import midplate.words.Message;

/**
 * A compound that lessons offer: easy to come by, and with few groups.
 *
 * @param id as it stands in requests
 * @param smiles its structure
 * @param seen how it is seen
 * @param note what a teacher should know of it, in English; its place in a lesson
 */
public record TeachingCompound(String id, String smiles, Seen seen, String note) {
    /** What it is called. */
    public Message said() {
        return Message.of("compound." + id);
    }

    /** How a compound is seen on a plate. */
    public enum Seen {
        /** It has a colour. */
        DAYLIGHT("daylight"),
        /** Dark on the layer that glows at 254 nm. */
        UV_254("uv-254"),
        /** Only after a stain. */
        STAIN("stain");

        private final String id;

        Seen(String id) {
            this.id = id;
        }

        /** As it stands in data and answers. */
        public String id() {
            return id;
        }
    }
}
