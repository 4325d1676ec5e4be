package coldseam.report.drawing;

/**
 * An opaque colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {

    /** @throws IllegalArgumentException where a part is outside 0 to 255 */
    public Ink {
        if (((red | green | blue) & ~0xFF) != 0) {
            throw new IllegalArgumentException(
                    "a colour's parts lie from 0 to 255; got " + red + ", " + green + ", " + blue);
        }
    }

    /** From a number such as 0x17414B. */
    public static Ink of(int rgb) {
        return new Ink(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** This mixed with white; 0 leaves it, 1 is white. */
    public Ink tint(double white) {
        return new Ink(mixed(red, white), mixed(green, white), mixed(blue, white));
    }

    private static int mixed(int part, double white) {
        return (int) Math.round(part + (255 - part) * white);
    }
}
