package coldseam.audit.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.shell.Shell;
import coldseam.files.Faults;
import coldseam.files.Position;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Whether what carries an old house is the same in the build-up that is found and in the one that is planned round it. */
final class FoundChecks {

    private FoundChecks() {}

    /** Adds a fault for each build-up as found whose structure stays, and that is not in the planned one. */
    static void check(LoadedHouse loaded, Shell shell, Faults faults) {
        loaded.house()
                .retrofit()
                .ifPresent(old -> old.found()
                        .ifPresent(found -> found.assemblies().forEachKeyValue((planned, was) -> {
                            if (shell.surfaces()
                                    .anySatisfy(
                                            surface -> surface.keepsStructureIn(old) && surface.isBuiltAs(planned))) {
                                kept(
                                        was,
                                        loaded.house().assemblies().get(planned),
                                        planned,
                                        loaded.foundAssemblies().get(planned),
                                        faults);
                            }
                        })));
    }

    /** Adds a fault for each layer that carries, stays, and is not in another build-up that might be chosen. */
    static void checkOption(
            LoadedHouse loaded,
            Shell shell,
            String planned,
            Assembly option,
            String name,
            Position place,
            Faults faults) {
        loaded.house()
                .retrofit()
                .filter(old -> shell.surfaces()
                        .anySatisfy(surface -> surface.keepsStructureIn(old) && surface.isBuiltAs(planned)))
                .ifPresent(old -> {
                    Optional<Assembly> found = old.found()
                            .flatMap(each ->
                                    Optional.ofNullable(each.assemblies().get(planned)));
                    Assembly described = loaded.house().assemblies().get(planned);
                    // Some of what is described may be new.
                    boolean keepsSome = described.structureGoneFrom(option).size()
                            < described.structure().size();
                    if (found.isPresent() || !keepsSome) {
                        kept(found.orElse(described), option, name, place, faults);
                    }
                });
    }

    private static void kept(Assembly was, Assembly planned, String name, Position place, Faults faults) {
        ImmutableList<Layer> carries = planned.structure();
        was.structureGoneFrom(planned)
                .forEach(
                        layer -> faults.add(
                                place,
                                "what carries stays as it is, unless it is built new",
                                said(layer).and(" in \"" + was.name() + "\""),
                                said(carries).and(" in \"" + name + "\""),
                                "correct one of the two, give what comes off another role, or name its surfaces under built-new"));
    }

    private static Phrase said(ImmutableList<Layer> layers) {
        Phrase all = Phrase.of(layers.isEmpty() ? "nothing that carries" : "");
        for (Layer layer : layers) {
            all = all.and(all.isEmpty() ? "" : ", ").and(said(layer));
        }
        return all;
    }

    private static Phrase said(Layer layer) {
        return Phrase.of(layer.thickness(), Dimension.THICKNESS)
                .and(" of " + layer.carrier()
                        + layer.framing()
                                .map(framing -> Format.of(", %.3g %% of the area", 100 * framing.share()))
                                .orElse(""));
    }
}
