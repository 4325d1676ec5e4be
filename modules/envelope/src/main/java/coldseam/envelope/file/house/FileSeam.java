package coldseam.envelope.file.house;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Seam;
import coldseam.envelope.file.Bounds;
import coldseam.envelope.file.Doc;
import coldseam.envelope.file.Located;
import coldseam.envelope.file.Noun;
import coldseam.envelope.file.Unit;
import coldseam.envelope.quantity.Dimension;

@Noun("a seam")
@Doc("A junction that the shape cannot show.")
record FileSeam(
        @Doc("Its kind, such as partition, ledger, canopy or balcony.")
        JunctionKind kind,

        @Doc("Name of the surface it lies on.") Located<String> surface,

        @Doc("Its length.") @Unit(Dimension.LENGTH) @Bounds(above = "0 m", atMost = "1000 m")
        double length) {

    Seam seam(String name) {
        return new Seam(name, kind, surface.value(), length);
    }
}
