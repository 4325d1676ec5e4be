package coldseam.audit.rules;

import coldseam.envelope.Control;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Words for control layers. */
final class Layers {

    /** Layers whose passing a detail states; heat is computed. */
    static final ImmutableList<Control> CONNECTED = Lists.immutable.of(Control.AIR, Control.WATER, Control.VAPOUR);

    private Layers() {}

    /** What a layer is called in a sentence. */
    static String word(Control control) {
        return switch (control) {
            case HEAT -> "insulation";
            case AIR -> "air layer";
            case WATER -> "water layer";
            case VAPOUR -> "vapour layer";
        };
    }
}
