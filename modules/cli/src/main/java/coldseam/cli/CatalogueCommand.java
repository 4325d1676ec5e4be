package coldseam.cli;

import coldseam.conduction.Accuracy;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.envelope.file.Nearest;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.CatalogueFile;
import coldseam.junctions.Junctions;
import coldseam.junctions.points.PointCatalogue;
import coldseam.junctions.points.PointComputer;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the kinds of junction and their options, with what each loses between given layers. */
@Command(
        name = "catalogue",
        description = {
            "Lists the kinds of junction and the options for each, from worst to best.",
            "With --kind, --house, --first or --second each option is computed between those layers: psi, fRsi, neck"
                    + " and weakest path. Without a house, build-ups a builder would use stand in."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CatalogueCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Workshop workshop;

    @Option(names = "--kind", paramLabel = "KIND", description = "Only this kind, such as \"slab edge\".")
    Optional<String> kind;

    @Mixin
    LayerOptions between;

    @Option(names = "--computed", description = "Compute every option of every kind; takes minutes.")
    boolean computed;

    @Option(names = "--assemblies", description = "List the build-ups --first and --second may name.")
    boolean assemblies;

    @Option(names = "--points", description = "Fasteners, posts, columns, brackets and pipes with their chi.")
    boolean points;

    @Option(
            names = "--atlas",
            paramLabel = "FOLDER",
            description =
                    "Sweep each option over insulation from 0 to 400 mm into atlas.csv and atlas.pdf; asked again,"
                            + " it goes on where it was stopped.")
    Optional<Path> atlas;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "Paper of the atlas (default: ${DEFAULT-VALUE}).")
    Paper paper;

    @Option(
            names = "--width",
            paramLabel = "SHARE",
            defaultValue = "1e-3",
            description = "Widest interval allowed, as a share of the coupling (default: ${DEFAULT-VALUE}).")
    double width;

    @Option(
            names = "--units",
            paramLabel = "us|si",
            defaultValue = "si",
            description = "Units to print: us or si (default: ${DEFAULT-VALUE}).")
    UnitSystem units;

    @Option(names = "--guide", description = "How to write a detail of your own; with --points, a point of your own.")
    boolean guide;

    CatalogueCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws IOException {
        if (guide) {
            terminal.out().println((points ? PointCatalogue.guide() : CatalogueFile.guide()).stripTrailing());
            return Exit.UNBROKEN.code();
        }
        Accuracy accuracy = accuracy();
        Optional<PointKind> pointKind = Lists.immutable
                .of(PointKind.values())
                .detectOptional(each -> Optional.of(each.label()).equals(kind));
        if (points || pointKind.isPresent()) {
            pointTable(workshop.pointComputer())
                    .computed(pointKind.map(Lists.immutable::of).orElse(Lists.immutable.of(PointKind.values())));
            return Exit.UNBROKEN.code();
        }
        Layers layers = between.layers(workshop);
        if (assemblies) {
            layers.assemblies()
                    .forEach(each -> Columns.fold(each.name(), "  ", "    ").forEach(terminal.out()::println));
            return Exit.UNBROKEN.code();
        }
        ImmutableList<JunctionKind> kinds = kinds();
        if (atlas.isPresent()) {
            new AtlasRun(terminal, layers, units, accuracy).write(kinds, atlas.get(), paper);
            return Exit.UNBROKEN.code();
        }
        OptionTable table = new OptionTable(terminal, layers, Junctions.computer(accuracy), units);
        if (kind.isEmpty() && between.notNamed() && !computed) {
            table.names(kinds);
            if (kind.isEmpty()) {
                terminal.out().println();
                pointTable(workshop.pointComputer()).names();
                terminal.out().println();
                Columns.fold(
                                "\"coldseam catalogue --points\" computes the points, what goes through at a spot.",
                                "",
                                "")
                        .forEach(terminal.out()::println);
            }
        } else {
            table.computed(kinds);
        }
        return Exit.UNBROKEN.code();
    }

    private PointTable pointTable(PointComputer computer) {
        return new PointTable(terminal, units, PointLayers.of(between, workshop), computer);
    }

    private Accuracy accuracy() {
        if (!(width > 0 && width < 1)) {
            throw new RefusedException(Lists.immutable.of(
                    "--width: got " + width + "; allowed: more than 0 and less than 1, such as 1e-3"));
        }
        return new Accuracy(width, Accuracy.standard().maximumUnknowns());
    }

    private ImmutableList<JunctionKind> kinds() {
        ImmutableList<JunctionKind> all = Lists.immutable.of(JunctionKind.values());
        return kind.map(word -> Lists.immutable.of(named(word, all))).orElse(all);
    }

    private static JunctionKind named(String word, ImmutableList<JunctionKind> kinds) {
        Optional<JunctionKind> found = kinds.detectOptional(each -> each.label().equals(word));
        return found.orElseThrow(() -> new RefusedException(Lists.immutable.of("--kind: got \"" + word + "\"; "
                + Nearest.to(
                                word,
                                kinds.collect(JunctionKind::label)
                                        .newWithAll(Lists.immutable
                                                .of(PointKind.values())
                                                .collect(PointKind::label)))
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("run \"coldseam catalogue\" for the kinds there are"))));
    }
}
