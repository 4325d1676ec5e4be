package coldseam.audit.rules;

import coldseam.envelope.Control;

/** Every surface towards outdoors, ground or an unheated space has a layer that stops air. */
public final class SurfaceWithoutAirLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutAirLayerRule() {
        super(Control.AIR);
    }
}
