package midplate.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the files of {@code solvent-data} come from: a folder, or packed with the program. */
final class DataFolder {
    private static final String TODO = "Put the file back; a complete folder comes with the program.";

    private final Opener opener;

    private DataFolder(Opener opener) {
        this.opener = opener;
    }

    static DataFolder of(Path folder) {
        return new DataFolder(file -> Files.readAllBytes(folder.resolve(file)));
    }

    static DataFolder packed() {
        return new DataFolder(file -> {
            try (InputStream in = DataFolder.class.getResourceAsStream("/solvent-data/" + file)) {
                if (in == null) {
                    throw new IOException("not packed with the program");
                }
                return in.readAllBytes();
            }
        });
    }

    /** The whole text of a file. */
    String text(String file) {
        byte[] bytes;
        try {
            bytes = opener.bytes(file);
        } catch (IOException e) {
            throw because(
                    e, new BadSolventData(file, "-", "-", String.valueOf(e.getMessage()), "a readable file", TODO));
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw because(
                    e,
                    new BadSolventData(
                            file, "-", "-", "bytes that are no UTF-8", "text in UTF-8", "Save it in UTF-8."));
        }
    }

    /** The fault with what led to it. */
    static BadSolventData because(Exception cause, BadSolventData fault) {
        fault.initCause(cause);
        return fault;
    }

    private interface Opener {
        byte[] bytes(String file) throws IOException;
    }
}
