package coldseam.envelope.file.house;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Seam;
import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;

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
