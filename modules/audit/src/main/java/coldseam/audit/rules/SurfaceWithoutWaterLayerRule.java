package coldseam.audit.rules;

import coldseam.envelope.Control;

/** A surface whose assembly names no water control layer. */
final class SurfaceWithoutWaterLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutWaterLayerRule() {
        super(Control.WATER, "water");
    }

    @Override
    public String id() {
        return "surface-without-water-layer";
    }

    @Override
    public String says() {
        return "Every surface towards outdoors or the ground has a layer that keeps water out.";
    }

    @Override
    public String closing() {
        return "Name the layer that sheds or stops water, or add one.";
    }

    @Override
    public int gravity() {
        return 13;
    }

    @Override
    String toDo(String assembly) {
        return "name the layer that keeps rain or ground water out in the house file, or add one with its laps and flashings";
    }
}
