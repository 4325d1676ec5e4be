package coldseam.cli;

import coldseam.audit.house.Workshop;
import coldseam.conduction.Accuracy;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.CornerKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.PointKind;
import coldseam.files.Nearest;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
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

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            split = ",",
            description = "Only these kinds, such as \"slab edge\"; several after commas, or --kind again for each.")
    List<String> kinds = List.of();

    @Mixin
    LayerOptions between;

    @Option(names = "--computed", description = "Compute every option of every kind; takes minutes.")
    boolean computed;

    @Option(names = "--assemblies", description = "List the build-ups --first and --second may name.")
    boolean assemblies;

    @Option(
            names = "--materials",
            description = "List the built-in materials, what a layer of each can control and what it bears.")
    boolean materials;

    @Option(names = "--points", description = "Fasteners, posts, columns, brackets and pipes with their chi.")
    boolean points;

    @Option(names = "--corners", description = "Corners' own details with their chi, between typical build-ups.")
    boolean corners;

    @Option(
            names = "--atlas",
            paramLabel = "FOLDER",
            description =
                    "Sweep each option over insulation from 0 to 400 mm (--units us: 0 to 16 in) into atlas.csv and"
                            + " atlas.pdf; asked again, it goes on where it was stopped.")
    Optional<Path> atlas;

    @Option(
            names = "--pdf",
            paramLabel = "OUT",
            description = "Draw and compute each option on a sheet, to leaf through; takes minutes for all kinds.")
    Optional<Path> pdf;

    @Mixin
    PaperOption pages;

    @Option(
            names = "--width",
            paramLabel = "SHARE",
            defaultValue = "1e-3",
            description = "Widest interval allowed, as a share of the coupling (default: ${DEFAULT-VALUE}).")
    double width;

    @Mixin
    UnitsOption printed;

    @Option(
            names = "--guide",
            description = "How to write a detail of your own; with --points or --corners, one of those.")
    boolean guide;

    CatalogueCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws IOException {
        if (guide) {
            String text =
                    points ? CatalogueFile.pointGuide() : corners ? CatalogueFile.cornerGuide() : CatalogueFile.guide();
            terminal.out().println(text.stripTrailing());
        } else if (materials) {
            new MaterialTable(terminal, units()).print();
        } else {
            options(accuracy());
        }
        return Exit.UNBROKEN.code();
    }

    private void options(Accuracy accuracy) throws IOException {
        refuseUnknown();
        ImmutableList<PointKind> chosenPoints = chosen(PointKind.all(), points);
        ImmutableList<CornerKind> chosenCorners = chosen(CornerKind.all(), corners);
        refuseUnwritten(chosenPoints.notEmpty() ? "points" : chosenCorners.notEmpty() ? "corners" : "");
        ImmutableList<JunctionKind> chosen = chosen(JunctionKind.all(), true);
        Layers layers = between.layers(workshop);
        OptionTable table = new OptionTable(terminal, layers, BridgeComputers.computer(accuracy), units());
        if (pdf.isPresent()) {
            sheets(chosen, chosenPoints, chosenCorners, layers, accuracy);
        } else if (chosenCorners.notEmpty()) {
            new CornerLines(
                            new DetailLines(terminal, units()),
                            layers.catalogue(),
                            between.build,
                            workshop.vertices().orElseThrow())
                    .options(chosenCorners);
        } else if (chosenPoints.notEmpty()) {
            table.computed(chosenPoints);
            if (words().notEmpty() && chosen.notEmpty()) {
                terminal.out().println();
                junctions(chosen, table, layers, accuracy);
            }
        } else {
            junctions(chosen, table, layers, accuracy);
        }
    }

    private UnitSystem units() {
        return printed.of(between.house);
    }

    private void junctions(ImmutableList<JunctionKind> chosen, OptionTable table, Layers layers, Accuracy accuracy)
            throws IOException {
        if (assemblies) {
            layers.assemblies().forEach(each -> terminal.fold(each.name(), "  ", "    "));
        } else if (atlas.isPresent()) {
            new AtlasRun(terminal, layers, units(), accuracy).write(chosen, atlas.get(), pages.of(units()));
        } else if (kinds.isEmpty() && between.notNamed() && !computed) {
            names(chosen, table, layers);
        } else {
            table.computed(chosen);
        }
    }

    /** All that there is, by name alone. */
    private void names(ImmutableList<JunctionKind> junctions, OptionTable table, Layers layers) {
        table.names(junctions);
        terminal.fold("Give --kind, --house or --first and --second to see what each loses between those layers;"
                + " \"coldseam detail ID\" draws one.");
        terminal.out().println();
        table.names(PointKind.all());
        terminal.fold("\"coldseam catalogue --points\" computes the points, what goes through at a spot.");
        terminal.out().println();
        table.names(
                CornerKind.all().select(kind -> layers.catalogue().options(kind).notEmpty()));
        terminal.fold(
                "\"coldseam catalogue --corners\" computes the corners, for which these are asked where the details"
                        + " of their edges leave them open.");
    }

    /** What was named, on sheets; where none is, all points or all corners where those are asked for, else all junctions. */
    private void sheets(
            ImmutableList<JunctionKind> junctionKinds,
            ImmutableList<PointKind> pointKinds,
            ImmutableList<CornerKind> cornerKinds,
            Layers layers,
            Accuracy accuracy)
            throws IOException {
        boolean others = points || corners;
        MutableList<BridgeKind> all = Lists.mutable.empty();
        if (words().notEmpty() || !others) {
            all.addAllIterable(junctionKinds);
        }
        all.addAllIterable(pointKinds);
        all.addAllIterable(cornerKinds);
        new CatalogueSheets(
                        terminal,
                        layers,
                        BridgeComputers.computer(accuracy),
                        workshop.vertices().orElseThrow(),
                        units())
                .write(
                        all.toImmutable(),
                        "Catalogue of "
                                + (all.allSatisfy(PointKind.class::isInstance)
                                        ? "points"
                                        : all.allSatisfy(CornerKind.class::isInstance)
                                                ? "corners"
                                                : "junction details"),
                        pdf.orElseThrow(),
                        pages.of(units()));
    }

    /** What was asked to be written and would not be. */
    private void refuseUnwritten(String others) {
        ImmutableList<String> asked = Lists.immutable
                .with(pdf.map(each -> "--pdf"), atlas.map(each -> "--atlas"))
                .flatCollect(each -> each.stream().toList());
        if (asked.size() > 1) {
            throw new RefusedException("--pdf, --atlas: got both; allowed: one of them in a run");
        }
        if (atlas.isPresent() && !others.isEmpty()) {
            throw new RefusedException("--atlas: got it with " + others
                    + "; allowed: kinds of junction. Leave it out to see the " + others
                    + " here, or take --pdf for a sheet of each");
        }
    }

    private Accuracy accuracy() {
        if (!(width > 0 && width < 1)) {
            throw new RefusedException(
                    "--width: got " + width + "; allowed: more than 0 and less than 1, such as 1e-3");
        }
        return new Accuracy(width, Accuracy.standard().maximumUnknowns());
    }

    /**
     * The kinds that were named, in their own order.
     *
     * @param all of one sort
     * @param meant whether all are meant where none is named
     */
    private <K extends BridgeKind> ImmutableList<K> chosen(ImmutableList<K> all, boolean meant) {
        ImmutableList<String> words = words();
        return meant && words.isEmpty() ? all : all.select(each -> words.contains(each.label()));
    }

    private ImmutableList<String> words() {
        return Lists.immutable.withAll(kinds).collect(String::strip).distinct();
    }

    private void refuseUnknown() {
        ImmutableList<String> all = JunctionKind.all()
                .collect(JunctionKind::label)
                .newWithAll(PointKind.all().collect(PointKind::label))
                .newWithAll(CornerKind.all().collect(CornerKind::label));
        ImmutableList<String> unknown = words().reject(all::contains);
        if (unknown.notEmpty()) {
            throw new RefusedException(unknown.collect(word -> "--kind: got \"" + word + "\"; "
                    + Nearest.meant(word, all)
                            .orElse("one of " + Nearest.among(word, all) + "; \"coldseam catalogue\" lists them")));
        }
    }
}
