package coldseam.report.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * A small colour profile (ICC.1:2001-04, version 2.4, from memory) that says what the document's red, green and blue are: the
 * primaries of sRGB (IEC 61966-2-1, adapted to D50; from memory) with a plain gamma of 2.2.
 *
 * <p>Written by hand, so that the bytes do not depend on the machine.
 */
final class ColourProfile {

    private static final int HEADER = 128;
    private static final String NAME = "RGB with sRGB primaries, gamma 2.2";

    private ColourProfile() {}

    /** A tag's signature and data. */
    private record Tag(String signature, byte[] data) {}

    static byte[] bytes() {
        byte[] gamma = curve(2.2);
        Tag[] tags = {
            new Tag("desc", description()),
            new Tag("cprt", text("No rights reserved")),
            new Tag("wtpt", xyz(0.9642, 1, 0.8249)),
            new Tag("rXYZ", xyz(0.43607, 0.22249, 0.01392)),
            new Tag("gXYZ", xyz(0.38515, 0.71687, 0.09708)),
            new Tag("bXYZ", xyz(0.14307, 0.06061, 0.7141)),
            new Tag("rTRC", gamma),
            new Tag("gTRC", gamma),
            new Tag("bTRC", gamma)
        };
        int at = HEADER + 4 + 12 * tags.length;
        int size = at;
        for (Tag tag : tags) {
            size += padded(tag.data.length);
        }
        ByteBuffer out = ByteBuffer.allocate(size);
        header(out, size);
        out.position(HEADER);
        out.putInt(tags.length);
        for (Tag tag : tags) {
            out.put(ascii(tag.signature)).putInt(at).putInt(tag.data.length);
            at += padded(tag.data.length);
        }
        for (Tag tag : tags) {
            out.put(tag.data);
            out.position(padded(out.position()));
        }
        return out.array();
    }

    private static void header(ByteBuffer out, int size) {
        out.putInt(size).putInt(0).putInt(0x02400000);
        out.put(ascii("mntr")).put(ascii("RGB ")).put(ascii("XYZ "));
        // A fixed day, since a profile must name one.
        out.putShort((short) 2026).putShort((short) 1).putShort((short) 1);
        out.putShort((short) 0).putShort((short) 0).putShort((short) 0);
        out.put(ascii("acsp"));
        out.position(68);
        out.put(fixed(0.9642)).put(fixed(1)).put(fixed(0.8249));
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] fixed(double value) {
        return ByteBuffer.allocate(4).putInt((int) Math.round(value * 65536)).array();
    }

    private static byte[] xyz(double x, double y, double z) {
        return ByteBuffer.allocate(20)
                .put(ascii("XYZ "))
                .putInt(0)
                .put(fixed(x))
                .put(fixed(y))
                .put(fixed(z))
                .array();
    }

    private static byte[] curve(double gamma) {
        return ByteBuffer.allocate(14)
                .put(ascii("curv"))
                .putInt(0)
                .putInt(1)
                .putShort((short) Math.round(gamma * 256))
                .array();
    }

    private static byte[] text(String words) {
        return ByteBuffer.allocate(9 + words.length())
                .put(ascii("text"))
                .putInt(0)
                .put(ascii(words))
                .put((byte) 0)
                .array();
    }

    /** The name in ASCII; no Unicode and no script code. */
    private static byte[] description() {
        int count = NAME.length() + 1;
        return ByteBuffer.allocate(12 + count + 8 + 3 + 67)
                .put(ascii("desc"))
                .putInt(0)
                .putInt(count)
                .put(ascii(NAME))
                .array();
    }
}
