package coldseam.cli;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.house.BuildUps;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.section.Composer;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Which pairs of typical build-ups no option is drawn for: such a seam has no value until the house gives a detail or psi of its own. */
@Tag("slow")
class BuildsWithoutOptionTest {

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    private static final String HEAD = """
            # Build-ups without an option

            At a junction of these typical build-ups no option of the catalogue fits, not even a worst one: such a seam has no
            value, its house "at least" a heat loss, until the house file gives a detail or a psi of its own. Floors of joists on
            the ground are left out. `BuildsWithoutOptionTest` writes this page.

            | kind | first surface | second surface |
            |---|---|---|
            """;

    /** Every way to build a surface: as its kind usually has it, insulated inside, in its frame alone, or of blocks. */
    private static ImmutableList<Assembly> builds(JunctionKind kind, int which) {
        BridgeKind.Facing facing = kind.faces().get(which);
        JunctionKind.Typical typical = kind.typical();
        ImmutableList<String> uses = Lists.immutable.of(
                which == 0 ? typical.first() : typical.second().orElseThrow(),
                BuildUps.insulatedInside(facing),
                BuildUps.inItsFrame(facing),
                BuildUps.frameInsulatedInside(facing),
                facing == BridgeKind.Facing.SIDE ? BuildUps.monolithic() : BuildUps.insulatedInside(facing));
        return uses.collect(BuildUps.all()::get)
                .flatCollect(each -> Lists.immutable.of(each.masonry(), each.frame()))
                .distinct()
                .reject(each -> kind.form().ground() && facing == BridgeKind.Facing.DOWN && framed(each));
    }

    private static boolean framed(Assembly assembly) {
        return assembly.layers().anySatisfy(layer -> layer.framing().isPresent());
    }

    private static boolean fits(Detail detail, JunctionSetup setup) {
        try {
            return Composer.isFor(detail, setup) && Composer.compose(detail, setup, MaterialLibrary::named) != null;
        } catch (DetailDoesNotFit notOffered) {
            return false;
        }
    }

    @Test
    void thePageTellsThemAll() throws IOException {
        Set<String> rows = new ConcurrentSkipListSet<>();
        JunctionKind.all().castToList().parallelStream().forEach(kind -> {
            JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
            ImmutableList<Optional<Assembly>> seconds = typical.second().isPresent()
                    ? builds(kind, 1).collect(Optional::of)
                    : Lists.immutable.of(Optional.empty());
            builds(kind, 0)
                    .forEach(first -> seconds.select(second -> CATALOGUE
                                    .options(kind)
                                    .noneSatisfy(each -> fits(each, typical.between(first, second))))
                            .forEach(second -> rows.add("| " + kind + " | " + first.name() + " | "
                                    + second.map(Assembly::name).orElse("") + " |\n")));
        });
        CommittedReport.check("builds.md", HEAD + String.join("", rows));
    }
}
