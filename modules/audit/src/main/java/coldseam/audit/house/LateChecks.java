package coldseam.audit.house;

import coldseam.envelope.Body;
import coldseam.envelope.JunctionKind.StoreyFloor;
import coldseam.envelope.Opening;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Nearest;
import coldseam.files.Position;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.ChoiceChecks;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What of a house file can be checked only with its shell and the details it names at hand. */
final class LateChecks {

    private static final Optional<StoreyFloor> PASSED = Optional.of(StoreyFloor.PASSED_BY_THE_STUDS);

    private LateChecks() {}

    /**
     * @param catalogue with the house's own details
     * @throws coldseam.files.FileFaultException with every name that is not beside any junction, every parameter or
     *     price that no detail has, every size that no house has, a balloon frame without frames, and every point that cannot be where it is said to be
     */
    static void refuse(LoadedHouse loaded, Shell shell, Catalogue catalogue) {
        Faults faults = new Faults();
        SizeChecks.check(loaded, shell, faults);
        FoundChecks.check(loaded, shell, faults);
        ChoiceChecks.check(loaded, catalogue, faults);
        ImmutableList<String> surfaces = shell.surfaces().collect(Surface::name);
        ImmutableList<String> names = Lists.mutable
                .withAll(surfaces)
                .withAll(loaded.house().openings().collect(Opening::name))
                .withAll(loaded.house().seams().collect(seam -> seam.name()))
                .toImmutable();
        loaded.choices().forEach(each -> check(each.surfaces(), names, faults));
        loaded.ownPsi().forEach(each -> check(each.surfaces(), names, faults));
        OwnPsiChecks.check(loaded, shell, names, faults);
        ImmutableList<String> parts =
                shell.surfaces().flatCollect(Surface::names).distinct();
        loaded.builtNew()
                .reject(each -> parts.contains(each.value()))
                .forEach(each -> unknown(
                        each.place(),
                        "the name of a surface of this house, or of a roof or a storey for all of its surfaces",
                        each.value(),
                        parts,
                        faults));
        ImmutableList<String> down = catalogue.partsTakenDown();
        loaded.takenDown()
                .reject(each -> down.contains(each.value()))
                .forEach(each ->
                        unknown(each.place(), "a part that some detail needs taken down", each.value(), down, faults));
        if (shell.edges().noneSatisfy(edge -> edge.kind().storeyFloor().equals(PASSED))) {
            loaded.balloonFrame()
                    .ifPresent(place -> faults.add(
                            place,
                            "studs that run past the floors, of framed walls that stay",
                            "balloon-frame: true in a house where no floor meets such a wall",
                            "a floor between two rooms at a wall whose structure has framing and is not built new",
                            "say the framing in the wall's assembly, or leave balloon-frame out"));
        }
        PointChecks pointChecks = new PointChecks(shell, catalogue, faults);
        loaded.points().forEach(pointChecks::check);
        loaded.decisions().forEach(each -> check(each.surfaces(), names, faults));
        DecisionChecks.check(loaded, shell, catalogue, faults);
        faults.throwIfAny();
    }

    private static void check(ImmutableList<Located<String>> surfaces, ImmutableList<String> names, Faults faults) {
        surfaces.reject(each -> names.contains(each.value()))
                .forEach(each -> unknown(
                        each.place(),
                        "the name of a surface, an opening or a seam of this house",
                        each.value(),
                        names,
                        faults));
    }

    /** Adds the fault of a name that is none of those known. */
    static void unknown(Position place, String asked, String got, ImmutableList<String> known, Faults faults) {
        faults.add(
                place,
                asked,
                "\"" + got + "\"",
                "one of " + Nearest.among(got, known),
                known.detectOptional(wall -> Body.Wall.gableOver(wall).equals(got))
                        .map(wall -> "write \"" + wall
                                + "\": a window reaches from it into the gable, which makes them one surface")
                        .or(() -> Nearest.meant(got, known))
                        .orElse("correct the name"));
    }
}
