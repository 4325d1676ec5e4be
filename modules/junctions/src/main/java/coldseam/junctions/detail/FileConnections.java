package coldseam.junctions.detail;

import coldseam.envelope.Control;
import coldseam.files.Default;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

/** How each control layer crosses, as files write it; what is left out is not shown. */
public record FileConnections(
        @Default("not shown") Connection air,
        @Default("not shown") Connection water,
        @Default("not shown") Connection vapour) {

    /** Nothing is said. */
    public static FileConnections notShown() {
        return new FileConnections(Connection.NOT_SHOWN, Connection.NOT_SHOWN, Connection.NOT_SHOWN);
    }

    /** By control layer. */
    public ImmutableMap<Control, Connection> byControl() {
        return Maps.immutable.of(Control.AIR, air, Control.WATER, water, Control.VAPOUR, vapour);
    }
}
