package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Coupling;
import coldseam.conduction.Interval;
import coldseam.conduction.NetHeatFlow;
import coldseam.conduction.Outcome;
import coldseam.conduction.Point;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.TemperatureField;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.path.PathQuestion;
import coldseam.junctions.section.Composition;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.io.WKBWriter;

/** Questions and answers of the solver, and of the search for weakest paths, as bytes; doubles keep every bit. */
public final class SolutionBytes {

    private SolutionBytes() {}

    /** What was asked, for its hash; every part that can change the answer. */
    static byte[] question(Section section, Accuracy accuracy) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeUTF(section.name());
            out.writeUTF(section.symmetry().name());
            out.writeDouble(accuracy.relativeWidth());
            out.writeInt(accuracy.maximumUnknowns());
            out.writeUTF(accuracy.aim().map(Accuracy.Aim::environment).orElse(""));
            out.writeDouble(accuracy.aim().map(Accuracy.Aim::kelvin).orElse(0.0));
            out.writeInt(section.regions().size());
            for (var region : section.regions()) {
                out.writeUTF(region.material());
                out.writeDouble(region.conductivity());
                points(region.outline().corners(), out);
            }
            out.writeInt(section.environments().size());
            for (var environment : section.environments()) {
                out.writeUTF(environment.name());
                out.writeDouble(environment.temperature());
                out.writeDouble(environment.surfaceResistance());
            }
            boundaries(section.boundaries(), out);
            out.writeInt(section.probes().size());
            for (var probe : section.probes()) {
                out.writeUTF(probe.name());
                point(probe.at(), out);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** What was asked, for its hash; every part that a search may look at. */
    static byte[] question(PathQuestion question) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(question.faces().size());
            for (Composition.Face face : question.faces()) {
                out.write(new WKBWriter().write(face.area()));
                out.writeDouble(face.conductivity());
                out.writeBoolean(face.insulates());
            }
            boundaries(question.boundaries(), out);
            out.writeInt(question.colder().size());
            for (String environment : question.colder()) {
                out.writeUTF(environment);
            }
            out.writeDouble(question.neighbour());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** A weakest path. */
    static byte[] write(WeakestPath path) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            points(path.path(), out);
            out.writeDouble(path.resistance());
            out.writeDouble(path.neighbour());
            out.writeDouble(path.ratio());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** What {@link #write(WeakestPath)} wrote. */
    static WeakestPath readPath(byte[] content) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(content))) {
            return new WeakestPath(list(in, () -> point(in)), in.readDouble(), in.readDouble(), in.readDouble());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** An answer without its section and accuracy, which the reader knows; its field last. */
    static byte[] write(Solution solution) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(numbers(solution));
        KeptField.pack(solution.field(), bytes);
        return bytes.toByteArray();
    }

    /** An answer without its section, accuracy and field. */
    static byte[] numbers(Solution solution) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(solution.couplings().size());
            for (Coupling coupling : solution.couplings()) {
                out.writeUTF(coupling.first());
                out.writeUTF(coupling.second());
                interval(coupling.value(), out);
            }
            out.writeInt(solution.heatFlows().size());
            for (NetHeatFlow flow : solution.heatFlows()) {
                out.writeUTF(flow.environment());
                interval(flow.value(), out);
            }
            out.writeInt(solution.surfaces().size());
            for (SurfaceTemperature<Point> surface : solution.surfaces()) {
                out.writeUTF(surface.environment());
                out.writeDouble(surface.lowest());
                point(surface.at(), out);
                out.writeDouble(surface.change());
            }
            out.writeInt(solution.probes().size());
            for (ProbeTemperature probe : solution.probes()) {
                out.writeUTF(probe.name());
                out.writeDouble(probe.temperature());
                out.writeDouble(probe.change());
            }
            outcome(solution.outcome(), out);
            out.writeInt(solution.unknowns());
            out.writeDouble(solution.seconds());
            out.writeInt(solution.notes().size());
            for (String note : solution.notes()) {
                out.writeUTF(note);
            }
            double[] energies = solution.field().energies();
            out.writeInt(energies.length);
            for (double each : energies) {
                out.writeDouble(each);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** The answer to a question. */
    static Solution read(byte[] content, Section section, Accuracy accuracy) {
        return read(content, section, accuracy, packed -> KeptField.unpacked(packed, section));
    }

    /**
     * The answer to a question.
     *
     * @param field of what follows the numbers
     */
    static Solution read(byte[] content, Section section, Accuracy accuracy, Function<byte[], TemperatureField> field) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(content))) {
            ImmutableList<Coupling> couplings = list(in, () -> new Coupling(in.readUTF(), in.readUTF(), interval(in)));
            ImmutableList<NetHeatFlow> flows = list(in, () -> new NetHeatFlow(in.readUTF(), interval(in)));
            ImmutableList<SurfaceTemperature<Point>> surfaces =
                    list(in, () -> new SurfaceTemperature<>(in.readUTF(), in.readDouble(), point(in), in.readDouble()));
            ImmutableList<ProbeTemperature> probes =
                    list(in, () -> new ProbeTemperature(in.readUTF(), in.readDouble(), in.readDouble()));
            Outcome outcome = outcome(in);
            int unknowns = in.readInt();
            double seconds = in.readDouble();
            ImmutableList<String> notes = list(in, in::readUTF);
            double[] energies = new double[in.readInt()];
            for (int i = 0; i < energies.length; i++) {
                energies[i] = in.readDouble();
            }
            return new Solution(
                    section,
                    couplings,
                    flows,
                    surfaces,
                    probes,
                    new KeptField(energies, in.readAllBytes(), field),
                    accuracy,
                    outcome,
                    unknowns,
                    seconds,
                    notes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static void outcome(Outcome outcome, DataOutputStream out) throws IOException {
        out.writeUTF(outcome.getClass().getSimpleName());
        out.writeDouble(outcome.asked());
        out.writeDouble(outcome.got());
        out.writeInt(
                outcome instanceof Outcome.UnknownsSpent spent
                        ? spent.unknowns()
                        : outcome instanceof Outcome.ColdestUnsure cold
                                ? cold.end().ordinal()
                                : 0);
        out.writeDouble(outcome.unsure());
        point(outcome.at().orElse(new Point(0, 0)), out);
    }

    private static Outcome outcome(DataInputStream in) throws IOException {
        String kind = in.readUTF();
        double asked = in.readDouble();
        double got = in.readDouble();
        int unknowns = in.readInt();
        double kelvin = in.readDouble();
        Point at = point(in);
        return switch (kind) {
            case "Met" -> new Outcome.Met(asked, got);
            case "UnknownsSpent" -> new Outcome.UnknownsSpent(asked, got, unknowns);
            case "ColdestUnsure" -> {
                Outcome.ColdestUnsure.End[] ends = Outcome.ColdestUnsure.End.values();
                if (unknowns < 0 || unknowns >= ends.length) {
                    throw new IOException("unknown end " + unknowns);
                }
                yield new Outcome.ColdestUnsure(asked, got, kelvin, ends[unknowns]);
            }
            case "SingularCorner" -> new Outcome.SingularCorner(asked, got, at);
            case "Infinite" -> new Outcome.Infinite(asked, at);
            default -> throw new IOException("unknown outcome " + kind);
        };
    }

    private interface Reading<T> {
        T read() throws IOException;
    }

    private static <T> ImmutableList<T> list(DataInputStream in, Reading<T> one) throws IOException {
        MutableList<T> all = Lists.mutable.empty();
        int count = in.readInt();
        for (int i = 0; i < count; i++) {
            all.add(one.read());
        }
        return all.toImmutable();
    }

    private static void boundaries(ImmutableList<Boundary> boundaries, DataOutputStream out) throws IOException {
        out.writeInt(boundaries.size());
        for (Boundary boundary : boundaries) {
            out.writeUTF(boundary.environment());
            out.writeBoolean(boundary.surfaceResistance().isPresent());
            out.writeDouble(boundary.surfaceResistance().orElse(0));
            points(boundary.path(), out);
        }
    }

    private static void points(ImmutableList<Point> points, DataOutputStream out) throws IOException {
        out.writeInt(points.size());
        for (Point each : points) {
            point(each, out);
        }
    }

    private static void point(Point point, DataOutputStream out) throws IOException {
        out.writeDouble(point.x());
        out.writeDouble(point.y());
    }

    private static Point point(DataInputStream in) throws IOException {
        return new Point(in.readDouble(), in.readDouble());
    }

    private static void interval(Interval interval, DataOutputStream out) throws IOException {
        out.writeDouble(interval.lower());
        out.writeDouble(interval.upper());
    }

    private static Interval interval(DataInputStream in) throws IOException {
        return new Interval(in.readDouble(), in.readDouble());
    }
}
