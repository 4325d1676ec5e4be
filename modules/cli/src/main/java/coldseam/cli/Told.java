package coldseam.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * What a run came to: everything that it prints and writes but for where.
 *
 * @param code its exit code
 * @param documents contents of the files that were asked for, in an order of the command's own; nobody alters them
 */
record Told(int code, ImmutableList<String> lines, ImmutableList<byte[]> documents) {

    /** A document of text. */
    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** For a folder of kept results. */
    byte[] write() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(code);
            for (ImmutableList<byte[]> part : Lists.immutable.of(lines.collect(Told::bytes), documents)) {
                out.writeInt(part.size());
                for (byte[] each : part) {
                    out.writeInt(each.length);
                    out.write(each);
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** What {@link #write} wrote. */
    static Told read(byte[] content) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(content))) {
            int code = in.readInt();
            ImmutableList<String> lines = parts(in).collect(each -> new String(each, StandardCharsets.UTF_8));
            return new Told(code, lines, parts(in));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static ImmutableList<byte[]> parts(DataInputStream in) throws IOException {
        MutableList<byte[]> parts = Lists.mutable.empty();
        int count = in.readInt();
        for (int i = 0; i < count; i++) {
            parts.add(in.readNBytes(in.readInt()));
        }
        return parts.toImmutable();
    }
}
