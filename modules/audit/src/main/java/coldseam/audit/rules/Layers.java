package coldseam.audit.rules;

import coldseam.envelope.Control;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Words for control layers. */
final class Layers {

    /** Layers whose passing a detail states; heat is computed. */
    static final ImmutableList<Control> CONNECTED = Lists.immutable.of(Control.AIR, Control.WATER, Control.VAPOUR);

    private Layers() {}

    /** Several in a phrase: "insulation", "air and vapour control", "insulation, air and water control". */
    static String phrase(ImmutableList<Control> controls) {
        ImmutableList<Control> connected = controls.select(CONNECTED::contains);
        ImmutableList<String> words = Lists.mutable
                .withAll(controls.contains(Control.HEAT) ? Lists.immutable.of("insulation") : Lists.immutable.empty())
                .withAll(connected.collect(control -> control.name().toLowerCase(Locale.ROOT)))
                .toImmutable();
        String listed = words.size() < 2
                ? words.makeString()
                : words.take(words.size() - 1).makeString(", ") + " and " + words.getLast();
        return connected.isEmpty() ? listed : listed + " control";
    }
}
