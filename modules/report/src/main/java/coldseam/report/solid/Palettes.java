package coldseam.report.solid;

import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.SolidBody;
import coldseam.report.drawing.Look;
import coldseam.report.section.Looks;

/** How the painted boxes of a body look. */
record Palettes(SolidBody body) {

    /** @param piece index of a painted box of material */
    Look of(int piece) {
        return body.painted()
                .get(piece)
                .match(solid -> Looks.of(solid.material(), solid.conductivity()), air -> Look.AIR, none -> Look.AIR);
    }

    PaintedBox.Solid solid(int piece) {
        return (PaintedBox.Solid) body.painted().get(piece);
    }
}
