package coldseam.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * What a jar says of its files in the directory that it ends in, as it lies there: the platform makes objects of all 14,000
 * files of ours before it says a name of one, which took a twentieth of a short run.
 */
public final class JarDirectory {

    /** The record that a zip file ends in, where nobody has added a comment, and where it tells of the directory. */
    private static final int END_BYTES = 22;

    private static final int END_MARK = 0x06054b50;
    private static final int END_SIZE = 12;
    private static final int END_OFFSET = 16;

    /** What the directory says of each file, and where. */
    private static final int FILE_MARK = 0x02014b50;

    private static final int FILE_SUM = 16;
    private static final int FILE_NAME_SIZE = 28;
    private static final int FILE_MORE_SIZE = 30;
    private static final int FILE_COMMENT_SIZE = 32;
    private static final int FILE_NAME = 46;

    private static final Map<Path, JarDirectory> OPEN = new ConcurrentHashMap<>();

    private final byte[] bytes;

    private JarDirectory(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * A file of a jar.
     *
     * @param name in full
     * @param sum CRC-32 of its content
     */
    public record Entry(String name, long sum) {}

    /** @throws IOException where the file does not end in the directory of a jar */
    public static JarDirectory of(Path jar) throws IOException {
        try (FileChannel file = FileChannel.open(jar)) {
            ByteBuffer end = part(file, file.size() - END_BYTES, END_BYTES);
            if (end.getInt(0) != END_MARK) {
                throw new IOException(jar + " does not end in a directory");
            }
            return new JarDirectory(part(file, Integer.toUnsignedLong(end.getInt(END_OFFSET)), end.getInt(END_SIZE))
                    .array());
        }
    }

    /**
     * The directory of a jar that classes are loaded from, read once.
     *
     * @throws IOException as {@link #of}
     */
    public static JarDirectory ofOpen(Path jar) throws IOException {
        JarDirectory known = OPEN.get(jar);
        if (known == null) {
            known = of(jar);
            OPEN.put(jar, known);
        }
        return known;
    }

    private static ByteBuffer part(FileChannel file, long from, int size) throws IOException {
        if (from < 0 || size < 0 || from + size > file.size()) {
            throw new IOException("the file ends before what it names");
        }
        ByteBuffer part = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
        while (part.hasRemaining() && file.read(part, from + part.position()) >= 0) {}
        return part.flip();
    }

    /** Two check sums of all of it: any other jar has others. */
    public byte[] sums() {
        ByteBuffer sums = ByteBuffer.allocate(2 * Long.BYTES);
        for (Checksum sum : new Checksum[] {new CRC32(), new CRC32C()}) {
            sum.update(bytes);
            sums.putLong(sum.getValue());
        }
        return sums.array();
    }

    /**
     * Files in their order in the directory.
     *
     * @param begins what their names begin with, ASCII
     * @param ends what their names end in, ASCII
     * @throws IOException where the directory is none
     */
    public ImmutableList<Entry> entries(String begins, String ends) throws IOException {
        byte[] first = begins.getBytes(StandardCharsets.US_ASCII);
        byte[] last = ends.getBytes(StandardCharsets.US_ASCII);
        MutableList<Entry> found = Lists.mutable.empty();
        int at = 0;
        while (at < bytes.length) {
            int from = at + FILE_NAME;
            int to = from <= bytes.length ? from + uint16(at + FILE_NAME_SIZE) : Integer.MAX_VALUE;
            if (to > bytes.length || int32(at) != FILE_MARK) {
                throw new IOException("the directory of the jar is broken");
            }
            if (to - from >= first.length + last.length && is(first, from) && is(last, to - last.length)) {
                found.add(new Entry(
                        new String(bytes, from, to - from, StandardCharsets.UTF_8),
                        Integer.toUnsignedLong(int32(at + FILE_SUM))));
            }
            at = to + uint16(at + FILE_MORE_SIZE) + uint16(at + FILE_COMMENT_SIZE);
        }
        return found.toImmutable();
    }

    private boolean is(byte[] text, int at) {
        return Arrays.equals(text, 0, text.length, bytes, at, at + text.length);
    }

    private int uint16(int at) {
        return bytes[at] & 0xff | (bytes[at + 1] & 0xff) << Byte.SIZE;
    }

    private int int32(int at) {
        return uint16(at) | uint16(at + 2) << 2 * Byte.SIZE;
    }
}
