package coldseam.audit.rules;

import coldseam.envelope.Control;

/** A surface whose assembly names no air control layer. */
final class SurfaceWithoutAirLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutAirLayerRule() {
        super(Control.AIR, "air");
    }

    @Override
    public String id() {
        return "surface-without-air-layer";
    }

    @Override
    public String says() {
        return "Every surface towards outdoors, ground or an unheated space has a layer that stops air.";
    }

    @Override
    public String closing() {
        return "Name the layer that is taped, plastered or sealed airtight, or add one.";
    }

    @Override
    public int gravity() {
        return 12;
    }

    @Override
    String toDo(String assembly) {
        return "name the airtight layer of this build-up in the house file, or add one and join it to its neighbours";
    }
}
