package coldseam.conduction.solid;

/**
 * Surface resistances by the way a surface faces, m²·K/W, each greater than or equal to 0; named as the sides of the solid
 * that has the surface.
 *
 * @param x0 of a surface that faces falling x
 * @param x1 of one that faces growing x
 * @param y0 of one that faces falling y
 * @param y1 of one that faces growing y
 * @param z0 of one that faces down
 * @param z1 of one that faces up
 */
public record Faces(double x0, double x1, double y0, double y1, double z0, double z1) {

    /** One for all. */
    public static Faces all(double resistance) {
        return new Faces(resistance, resistance, resistance, resistance, resistance, resistance);
    }

    /** The same with another resistance for one side. */
    public Faces with(BoxSide side, double resistance) {
        return new Faces(
                side == BoxSide.X0 ? resistance : x0,
                side == BoxSide.X1 ? resistance : x1,
                side == BoxSide.Y0 ? resistance : y0,
                side == BoxSide.Y1 ? resistance : y1,
                side == BoxSide.Z0 ? resistance : z0,
                side == BoxSide.Z1 ? resistance : z1);
    }

    /** Of a surface that faces a side. */
    public double of(BoxSide outward) {
        return switch (outward) {
            case X0 -> x0;
            case X1 -> x1;
            case Y0 -> y0;
            case Y1 -> y1;
            case Z0 -> z0;
            case Z1 -> z1;
        };
    }
}
