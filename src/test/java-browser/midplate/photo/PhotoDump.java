package midplate.photo;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes pictures and their truth into a folder: folder, first seed, last seed. */
final class PhotoDump {
    private static final ObjectMapper JSON = new ObjectMapper();

    private PhotoDump() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (long seed = Long.parseLong(args[1]); seed <= Long.parseLong(args[2]); seed++) {
            Photo photo = Photo.of(seed);
            String name = "%04d".formatted(seed);
            Files.write(folder.resolve(name + ".jpg"), photo.jpeg());
            Files.writeString(
                    folder.resolve(name + ".json"),
                    JSON.writerWithDefaultPrettyPrinter().writeValueAsString(photo.truth()));
        }
    }
}
