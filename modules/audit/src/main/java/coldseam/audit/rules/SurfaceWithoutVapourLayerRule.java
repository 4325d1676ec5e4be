package coldseam.audit.rules;

import coldseam.envelope.Control;

/** A surface whose assembly names no vapour control layer. */
final class SurfaceWithoutVapourLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutVapourLayerRule() {
        super(Control.VAPOUR, "vapour");
    }

    @Override
    public String id() {
        return "surface-without-vapour-layer";
    }

    @Override
    public String says() {
        return "Every surface towards outdoors, ground or an unheated space has a layer that governs vapour.";
    }

    @Override
    public String closing() {
        return "Name the layer that governs vapour, on the warm side as a rule, or add one.";
    }

    @Override
    public int gravity() {
        return 14;
    }

    @Override
    String toDo(String assembly) {
        return "name the layer that governs vapour in the house file, or add one; check that the build-up can still dry";
    }
}
