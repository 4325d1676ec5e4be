package coldseam.benchmarks;

import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The eight junction sections that are timed; lengths in millimetres. */
public final class Sections {

    private final String name;
    private final MutableList<Region> regions = Lists.mutable.empty();
    private final MutableList<Environment> environments = Lists.mutable.empty();
    private final MutableList<Boundary> boundaries = Lists.mutable.empty();

    private Sections(String name) {
        this.name = name;
    }

    /** All eight. */
    public static ImmutableList<Section> all() {
        return Lists.immutable.of(
                slabThroughInsulation(),
                roofEdge(),
                steelPlates(),
                iso10211Case2(),
                flashing(),
                windowJamb(),
                slabOnGround(),
                parapet());
    }

    /** An insulated wall whose insulation a concrete floor slab interrupts. */
    public static Section slabThroughInsulation() {
        return new Sections("slab-through-insulation")
                .paint("mineral wool", 0.035, 0, 0, 120, 3200)
                .paint("masonry", 0.8, 120, 0, 320, 3200)
                .paint("plaster", 0.57, 320, 0, 335, 3200)
                .paint("concrete", 2.3, 0, 1500, 1835, 1700)
                .environments(20, 0.13, -5, 0.04)
                .boundary("outdoor", 0, 3200, 0, 0)
                .boundary("indoor", 335, 0, 335, 1500, 1835, 1500)
                .boundary("indoor", 1835, 1700, 335, 1700, 335, 3200)
                .section();
    }

    /** A flat roof, the slab running out to the face of a solid wall. */
    public static Section roofEdge() {
        return new Sections("roof-edge")
                .paint("brick", 0.8, 0, 0, 380, 1200)
                .paint("plaster", 0.57, 365, 0, 380, 1200)
                .paint("concrete", 2.3, 0, 1200, 1880, 1380)
                .paint("rigid foam", 0.03, 0, 1380, 1880, 1540)
                .paint("membrane", 0.2, 0, 1540, 1880, 1545)
                .environments(20, 0.13, -5, 0.04)
                .boundary("outdoor", 0, 0, 0, 1545, 1880, 1545)
                .boundary("indoor", 380, 0, 380, 1200, 1880, 1200)
                .section();
    }

    /** A steel beam between two end plates right through an insulated wall. */
    public static Section steelPlates() {
        return new Sections("steel-plates")
                .paint("mineral wool", 0.035, 0, 0, 200, 2000)
                .paint("fibre board", 0.13, -12, 0, 0, 2000)
                .paint("fibre board", 0.13, 200, 0, 212, 2000)
                .paint("steel", 50, -22, 900, -12, 1100)
                .paint("steel", 50, -12, 996, 212, 1004)
                .paint("steel", 50, 212, 900, 222, 1100)
                .environments(20, 0.13, -5, 0.04)
                .boundary("outdoor", -12, 2000, -12, 1100, -22, 1100, -22, 900, -12, 900, -12, 0)
                .boundary("indoor", 212, 0, 212, 900, 222, 900, 222, 1100, 212, 1100, 212, 2000)
                .section();
    }

    /** ISO 10211:2017 Annex C case 2 (geometry from memory of the standard and from an open finite-element library). */
    public static Section iso10211Case2() {
        return new Sections("iso-10211-case-2")
                .paint("insulation", 0.029, 0, 1.5, 500, 41.5)
                .paint("concrete", 1.15, 0, 41.5, 500, 47.5)
                .paint("wood", 0.12, 0, 36.5, 15, 41.5)
                .paint("aluminium", 230, 0, 0, 500, 1.5)
                .paint("aluminium", 230, 0, 1.5, 1.5, 35)
                .paint("aluminium", 230, 0, 35, 15, 36.5)
                .environments(20, 0.11, 0, 0.06)
                .boundary("indoor", 0, 0, 500, 0)
                .boundary("outdoor", 500, 47.5, 0, 47.5)
                .section();
    }

    /** A 0.5 mm aluminium flashing from the face of the wall through its insulation to the masonry. */
    public static Section flashing() {
        return new Sections("flashing")
                .paint("masonry", 0.8, 160, 0, 360, 2000)
                .paint("mineral wool", 0.035, 15, 0, 160, 2000)
                .paint("render", 0.9, 0, 0, 15, 2000)
                .paint("aluminium", 160, -20, 1000, 160, 1000.5)
                .paint("aluminium", 160, 159.5, 1000, 160, 1100)
                .paint("aluminium", 160, -20.5, 980, -20, 1000.5)
                .environments(20, 0.13, -5, 0.04)
                .boundary("outdoor", 0, 2000, 0, 1000.5, -20.5, 1000.5, -20.5, 980, -20, 980, -20, 1000, 0, 1000, 0, 0)
                .boundary("indoor", 360, 0, 360, 2000)
                .section();
    }

    /** A timber window frame in the plane of the insulation, with a foamed joint. */
    public static Section windowJamb() {
        return new Sections("window-jamb")
                .paint("masonry", 0.8, 0, 160, 1000, 360)
                .paint("mineral wool", 0.035, 0, 10, 1000, 160)
                .paint("render", 0.9, 0, 0, 1000, 10)
                .paint("plaster", 0.57, 0, 360, 1000, 375)
                .paint("foam", 0.03, 1000, 110, 1012, 180)
                .paint("timber", 0.13, 1012, 110, 1090, 180)
                .paint("glazing", 0.035, 1075, 130, 1300, 154)
                .environments(20, 0.13, -5, 0.04)
                .boundary("outdoor", 0, 0, 1000, 0, 1000, 110, 1090, 110, 1090, 130, 1300, 130)
                .boundary("indoor", 1300, 154, 1090, 154, 1090, 180, 1000, 180, 1000, 375, 0, 375)
                .section();
    }

    /** A slab on ground with 20 m of soil out and down. */
    public static Section slabOnGround() {
        return new Sections("slab-on-ground")
                .paint("soil", 2.0, 0, -20000, 24000, 0)
                .paint("concrete", 2.3, 0, 0, 4000, 200)
                .paint("rigid foam", 0.035, 0, -120, 4000, 0)
                .paint("masonry", 0.3, 4000, -600, 4300, 1500)
                .paint("mineral wool", 0.035, 4300, -400, 4420, 1500)
                .environments(20, 0.17, 0, 0.04)
                .boundary("indoor", 0, 200, 4000, 200, 4000, 1500)
                .boundary("outdoor", 4420, 1500, 4420, 0, 24000, 0)
                .section();
    }

    /** A concrete parapet, wrapped in insulation. */
    public static Section parapet() {
        return new Sections("parapet")
                .paint("concrete", 2.3, 140, 0, 320, 1900)
                .paint("concrete", 2.3, 140, 1200, 2000, 1400)
                .paint("mineral wool", 0.035, 0, 0, 140, 1900)
                .paint("rigid foam", 0.03, 320, 1400, 2000, 1560)
                .paint("rigid foam", 0.03, 320, 1560, 400, 1900)
                .paint("rigid foam", 0.03, 0, 1900, 400, 1960)
                .paint("metal cap", 160, 0, 1960, 400, 1961)
                .environments(20, 0.13, -5, 0.04)
                .boundary("outdoor", 0, 0, 0, 1961, 400, 1961, 400, 1560, 2000, 1560)
                .boundary("indoor", 320, 0, 320, 1200, 2000, 1200)
                .section();
    }

    private Sections paint(String material, double conductivity, double x0, double y0, double x1, double y1) {
        regions.add(new Region(material, conductivity, Polygon.rectangle(1e-3 * x0, 1e-3 * y0, 1e-3 * x1, 1e-3 * y1)));
        return this;
    }

    private Sections environments(double indoor, double inner, double outdoor, double outer) {
        environments.add(new Environment("indoor", indoor, inner));
        environments.add(new Environment("outdoor", outdoor, outer));
        return this;
    }

    private Sections boundary(String environment, double... path) {
        MutableList<Point> points = Lists.mutable.empty();
        for (int i = 0; i < path.length; i += 2) {
            points.add(new Point(1e-3 * path[i], 1e-3 * path[i + 1]));
        }
        boundaries.add(new Boundary(environment, points.toImmutable(), OptionalDouble.empty()));
        return this;
    }

    private Section section() {
        return new Section(
                name,
                Symmetry.PLANAR,
                regions.toImmutable(),
                environments.toImmutable(),
                boundaries.toImmutable(),
                Lists.immutable.empty());
    }
}
