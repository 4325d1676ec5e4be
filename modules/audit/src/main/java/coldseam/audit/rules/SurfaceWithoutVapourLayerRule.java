package coldseam.audit.rules;

import coldseam.envelope.Control;

/** Every surface towards outdoors, ground or an unheated space has a layer that governs vapour. */
public final class SurfaceWithoutVapourLayerRule extends SurfaceWithoutLayer {

    SurfaceWithoutVapourLayerRule() {
        super(Control.VAPOUR);
    }
}
