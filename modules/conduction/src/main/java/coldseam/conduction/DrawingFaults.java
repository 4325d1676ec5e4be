package coldseam.conduction;

import coldseam.conduction.DrawingFault.About;
import java.util.Set;
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
     * Refuses a name that was there before.
     *
     * @param names there were
     * @param kind of what has it
     */
    public void name(Set<String> names, String kind, String name) {
        if (!names.add(name)) {
            add(kind + " " + name + " is there twice; give each " + kind + " a name of its own");
        }
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
