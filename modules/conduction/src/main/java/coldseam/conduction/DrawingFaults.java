package coldseam.conduction;

import coldseam.conduction.DrawingFault.About;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Gathers what is wrong with a drawing, one of its parts after the other, and asks what is asked of sections and bodies alike. */
public final class DrawingFaults {

    private final MutableList<DrawingFault> found;
    private About about = About.WHOLE;
    private int index;

    /** @param found takes every fault */
    public DrawingFaults(MutableList<DrawingFault> found) {
        this.found = found;
    }

    /** What the next faults are about. */
    public void look(About at, int i) {
        about = at;
        index = i;
    }

    public void add(String text) {
        found.add(new DrawingFault(about, index, text));
    }

    public boolean none() {
        return found.isEmpty();
    }

    /**
     * Looks at each part of one kind, and refuses one whose name was there before.
     *
     * @param kind what messages call it
     * @param look takes what messages call one, and it
     */
    public <T> void each(
            About at, String kind, ImmutableList<T> all, Function<T, String> name, BiConsumer<String, T> look) {
        Set<String> names = new HashSet<>();
        all.forEachWithIndex((each, i) -> {
            look(at, i);
            String what = kind + " " + name.apply(each);
            if (!names.add(name.apply(each))) {
                add(what + " is there twice; give each " + kind + " a name of its own");
            }
            look.accept(what, each);
        });
    }

    public void temperature(String what, double celsius) {
        if (!Double.isFinite(celsius)) {
            add(what + " has temperature " + celsius + " °C; it must be a number");
        }
    }

    public void conductivity(String what, double conductivity) {
        if (!(conductivity > 0 && conductivity < Double.POSITIVE_INFINITY)) {
            add(what + " has conductivity " + conductivity + " W/(m·K); it must be a number greater than 0");
        }
    }

    /** Refuses the first of some resistances that is none. */
    public void resistance(String what, double... resistances) {
        for (double each : resistances) {
            if (!(each >= 0 && each < Double.POSITIVE_INFINITY)) {
                add(what + " has surface resistance " + each + " m²·K/W; it must be a number, 0 or greater");
                return;
            }
        }
    }
}
