package coldseam.report.section;

import coldseam.conduction.Polygon;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.report.drawing.Look;
import java.util.OptionalDouble;

/**
 * A painted part of a section.
 *
 * @param outline m
 * @param conductivity W/(m·K); empty of an air layer, which has a resistance
 * @param look how it is drawn
 * @param solved whether heat flow was computed in it
 */
record PaintedPart(Polygon outline, String material, OptionalDouble conductivity, Look look, boolean solved) {

    static PaintedPart of(Polygon outline, Material material, Role role, boolean solved) {
        return new PaintedPart(
                outline,
                material.name(),
                material.isAir() ? OptionalDouble.empty() : OptionalDouble.of(material.conductivity()),
                Looks.of(material, role),
                solved);
    }
}
