package coldseam.conduction.solid;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.Interval;
import coldseam.conduction.NetHeatFlow;
import coldseam.conduction.Outcome;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.SurfaceTemperature;
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

/**
 * A solution of a body as bytes, for whoever keeps it: read again, it is the same to the last digit. One that more memory
 * would have made better is for nobody to keep.
 */
public final class KeptBody {

    private KeptBody() {}

    /** The bytes of a solution. */
    public static byte[] write(BodySolution solution) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream to = new DataOutputStream(bytes)) {
            to.write(numbers(solution));
            solution.field().write(to);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** The bytes of a solution without its field. */
    public static byte[] numbers(BodySolution solution) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream to = new DataOutputStream(bytes)) {
            for (Coupling each : solution.couplings()) {
                interval(to, each.value());
            }
            for (NetHeatFlow each : solution.heatFlows()) {
                interval(to, each.value());
            }
            for (SurfaceTemperature<Place> each : solution.surfaces()) {
                to.writeDouble(each.lowest());
                to.writeDouble(each.at().x());
                to.writeDouble(each.at().y());
                to.writeDouble(each.at().z());
                to.writeDouble(each.change());
            }
            for (ProbeTemperature each : solution.probes()) {
                to.writeDouble(each.temperature());
                to.writeDouble(each.change());
            }
            for (BodySolution.PatchTemperature each : solution.patches()) {
                interval(to, each.mean());
                to.writeDouble(each.area());
            }
            to.writeDouble(solution.outcome().got());
            to.writeDouble(solution.outcome().unsure());
            to.writeInt(solution.unknowns());
            to.writeDouble(solution.seconds());
            to.writeInt(solution.notes().size());
            for (String note : solution.notes()) {
                to.writeUTF(note);
            }
            double[] energies = solution.field().energies();
            to.writeInt(energies.length);
            for (double each : energies) {
                to.writeDouble(each);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static void interval(DataOutputStream to, Interval value) throws IOException {
        to.writeDouble(value.lower());
        to.writeDouble(value.upper());
    }

    private static Interval interval(DataInputStream from) throws IOException {
        return new Interval(from.readDouble(), from.readDouble());
    }

    /**
     * The solution that was written.
     *
     * @param body that was solved
     * @param accuracy that was asked
     */
    public static BodySolution read(byte[] bytes, SolidBody body, Accuracy accuracy) {
        return read(bytes, body, accuracy, packed -> new PackedBodyField(packed, body));
    }

    /**
     * The solution that was written.
     *
     * @param body that was solved
     * @param accuracy that was asked
     * @param field of what follows the numbers
     */
    public static BodySolution read(
            byte[] bytes, SolidBody body, Accuracy accuracy, Function<byte[], BodyField> field) {
        try (DataInputStream from = new DataInputStream(new ByteArrayInputStream(bytes))) {
            ImmutableList<String> names = body.environments().collect(BodyEnvironment::name);
            MutableList<Coupling> couplings = Lists.mutable.empty();
            for (int i = 0; i < names.size(); i++) {
                for (int j = i + 1; j < names.size(); j++) {
                    couplings.add(new Coupling(names.get(i), names.get(j), interval(from)));
                }
            }
            MutableList<NetHeatFlow> flows = Lists.mutable.empty();
            for (String name : names) {
                flows.add(new NetHeatFlow(name, interval(from)));
            }
            MutableList<SurfaceTemperature<Place>> surfaces = Lists.mutable.empty();
            for (String name : names) {
                double lowest = from.readDouble();
                Place at = new Place(from.readDouble(), from.readDouble(), from.readDouble());
                surfaces.add(new SurfaceTemperature<>(name, lowest, at, from.readDouble()));
            }
            MutableList<ProbeTemperature> probes = Lists.mutable.empty();
            for (BodyProbe each : body.probes()) {
                probes.add(new ProbeTemperature(each.name(), from.readDouble(), from.readDouble()));
            }
            MutableList<BodySolution.PatchTemperature> patches = Lists.mutable.empty();
            for (Patch each : body.patches()) {
                patches.add(new BodySolution.PatchTemperature(each.name(), interval(from), from.readDouble()));
            }
            double got = from.readDouble();
            double unsure = from.readDouble();
            int unknowns = from.readInt();
            double seconds = from.readDouble();
            MutableList<String> notes = Lists.mutable.empty();
            for (int left = from.readInt(); left > 0; left--) {
                notes.add(from.readUTF());
            }
            double[] energies = new double[from.readInt()];
            for (int i = 0; i < energies.length; i++) {
                energies[i] = from.readDouble();
            }
            Outcome outcome = unsure > 0
                    ? new Outcome.ColdestUnsure(
                            accuracy.relativeWidth(), got, unsure, Outcome.ColdestUnsure.End.ALLOWED)
                    : got <= accuracy.relativeWidth()
                            ? new Outcome.Met(accuracy.relativeWidth(), got)
                            : new Outcome.UnknownsSpent(accuracy.relativeWidth(), got, unknowns);
            return new BodySolution(
                    body,
                    couplings.toImmutable(),
                    flows.toImmutable(),
                    surfaces.toImmutable(),
                    probes.toImmutable(),
                    patches.toImmutable(),
                    new KeptBodyField(energies, from.readAllBytes(), field),
                    accuracy,
                    outcome,
                    unknowns,
                    seconds,
                    notes.toImmutable());
        } catch (IOException torn) {
            throw new UncheckedIOException(torn);
        }
    }
}
