package coldseam.audit.rules;

import coldseam.envelope.Control;

/** Every surface towards outdoors or the ground has a layer that keeps water out. */
public final class SurfaceWithoutWaterLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutWaterLayerRule() {
        super(Control.WATER);
    }
}
