package coldseam.cli;

import coldseam.envelope.Opening;
import coldseam.envelope.Selector;
import coldseam.envelope.file.Faults;
import coldseam.envelope.file.Nearest;
import coldseam.envelope.file.house.LoadedHouse;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.ChoiceChecks;
import coldseam.junctions.point.PointCatalogue;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What of a house file can be checked only with its shell and the details it names at hand. */
final class LateChecks {

    private LateChecks() {}

    /**
     * @param catalogue with the house's own details
     * @param points with the house's own point details
     * @throws coldseam.envelope.file.FileFaultException with every name that is not beside any junction, every parameter or
     *     price that no detail has, and every point that cannot be where it is said to be
     */
    static void refuse(LoadedHouse loaded, Shell shell, Catalogue catalogue, PointCatalogue points) {
        Faults faults = new Faults();
        ChoiceChecks.check(loaded, catalogue, faults);
        ImmutableList<String> names = Lists.mutable
                .withAll(shell.surfaces().collect(Surface::name))
                .withAll(loaded.house().openings().collect(Opening::name))
                .withAll(loaded.house().seams().collect(seam -> seam.name()))
                .toImmutable();
        loaded.house()
                .choices()
                .zip(loaded.choices())
                .forEach(pair -> check(pair.getOne().which(), pair.getTwo(), names, faults));
        loaded.house()
                .ownPsi()
                .zip(loaded.ownPsi())
                .forEach(pair -> check(pair.getOne().which(), pair.getTwo(), names, faults));
        loaded.house()
                .points()
                .zip(loaded.points())
                .forEach(pair -> new PointChecks(shell, points, faults).check(pair.getOne(), pair.getTwo()));
        faults.throwIfAny();
    }

    private static void check(
            Selector which, LoadedHouse.ChoicePlaces places, ImmutableList<String> names, Faults faults) {
        which.surfaces().zip(places.surfaces()).forEach(pair -> {
            if (!names.contains(pair.getOne())) {
                faults.add(
                        pair.getTwo(),
                        "the name of a surface, an opening or a seam of this house",
                        "\"" + pair.getOne() + "\"",
                        "one of " + names.makeString(", "),
                        Nearest.to(pair.getOne(), names)
                                .map(near -> "did you mean \"" + near + "\"?")
                                .orElse("correct the name"));
            }
        });
    }
}
