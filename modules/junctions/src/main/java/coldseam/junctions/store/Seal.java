package coldseam.junctions.store;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.zip.CRC32;

/** Names and contents of kept answers: each content carries its own check sum, so that one that is torn or altered shows. */
final class Seal {

    private static final int SUM_BYTES = Long.BYTES;
    private static final HexFormat HEX = HexFormat.of();

    private Seal() {}

    /** The name of an answer: the hash of the solver's code and the question. */
    static String name(byte[] core, byte[] question) {
        return HEX.formatHex(digest(core, question));
    }

    /** The hash of two things, one after the other. */
    static byte[] digest(byte[] first, byte[] second) {
        MessageDigest digest = sha256();
        digest.update(first);
        return digest.digest(second);
    }

    /** A content with its check sum before it: what is torn or altered by accident shows. */
    static byte[] sealed(byte[] content) {
        return ByteBuffer.allocate(SUM_BYTES + content.length)
                .putLong(sum(content, 0))
                .put(content)
                .array();
    }

    /** What was sealed; empty where it is no longer whole. */
    static Optional<byte[]> opened(byte[] all) {
        return all.length > SUM_BYTES && ByteBuffer.wrap(all).getLong() == sum(all, SUM_BYTES)
                ? Optional.of(Arrays.copyOfRange(all, SUM_BYTES, all.length))
                : Optional.empty();
    }

    private static long sum(byte[] bytes, int from) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, bytes.length - from);
        return sum.getValue();
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
