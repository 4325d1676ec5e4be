package coldseam.junctions.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/** Names and contents of kept answers: each content carries its own hash, so that one that is torn or altered shows. */
final class Seal {

    private static final int HASH_BYTES = 32;
    private static final HexFormat HEX = HexFormat.of();

    private Seal() {}

    /** The name of an answer: the hash of the solver's code and the question. */
    static String name(byte[] core, byte[] question) {
        MessageDigest digest = sha256();
        digest.update(core);
        digest.update(question);
        return HEX.formatHex(digest.digest());
    }

    /** A content with its hash before it. */
    static byte[] sealed(byte[] content) {
        byte[] hash = sha256().digest(content);
        byte[] all = Arrays.copyOf(hash, HASH_BYTES + content.length);
        System.arraycopy(content, 0, all, HASH_BYTES, content.length);
        return all;
    }

    /** What was sealed; empty where it is no longer whole. */
    static Optional<byte[]> opened(byte[] all) {
        if (all.length <= HASH_BYTES) {
            return Optional.empty();
        }
        byte[] content = Arrays.copyOfRange(all, HASH_BYTES, all.length);
        return Arrays.equals(sha256().digest(content), 0, HASH_BYTES, all, 0, HASH_BYTES)
                ? Optional.of(content)
                : Optional.empty();
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
