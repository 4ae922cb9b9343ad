package midplate.inference;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, which every Java has. */
final class Digest {
    private Digest() {}

    static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("This Java lacks SHA-256, which every Java must have.", e);
        }
    }

    static String sha256Text(byte[] bytes) {
        return HexFormat.of().formatHex(sha256(bytes));
    }
}
