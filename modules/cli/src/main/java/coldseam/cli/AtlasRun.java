package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import coldseam.conduction.Accuracy;
import coldseam.conduction.AllCores;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.atlas.Atlas;
import coldseam.junctions.atlas.AtlasCsv;
import coldseam.junctions.atlas.AtlasCurve;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.store.KeptFolder;
import coldseam.report.atlas.AtlasPdf;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Sweeps options over thicknesses into a folder; what was solved before is kept there and not solved again. */
record AtlasRun(Terminal terminal, Layers layers, UnitSystem units, Accuracy accuracy) {

    private static final String CSV = "atlas.csv";
    private static final String PDF = "atlas.pdf";
    private static final String SOLVED = "solved";

    /**
     * Writes the table and the charts.
     *
     * @throws RefusedException where the folder cannot be written, or nothing is there to sweep
     * @throws IOException where writing fails on the way
     */
    void write(ImmutableList<JunctionKind> kinds, Path folder, Paper paper) throws IOException {
        Path csv = folder.resolve(CSV);
        Path pdf = folder.resolve(PDF);
        Outputs.refuse(folder, Lists.immutable.of(csv, pdf));
        // Each kind's options are read here for the first time.
        ImmutableList<Sweep> sweeps = AllCores.collect(kinds, layers::swept, read -> {})
                .flatCollect(places -> places)
                .flatCollect(place -> Sweep.of(place.setup(), layers.fromHouse() ? place.origin() : ""));
        if (sweeps.isEmpty()) {
            throw new RefusedException("--atlas: nothing to sweep: no junction of the kinds asked for"
                    + " has a layer whose role is insulation; name other kinds or build-ups");
        }
        ProgressBar bar = new ProgressBar(terminal, "sections");
        ImmutableList<AtlasCurve> curves;
        try {
            curves = Atlas.compute(
                    sweeps,
                    Sweep.thicknesses(units),
                    setup -> layers.options(setup.kind(), setup),
                    BridgeComputers.measuring(accuracy, KeptFolder.in(folder.resolve(SOLVED))),
                    bar::at);
        } finally {
            bar.close();
        }
        say(curves);
        Outputs.write(
                terminal,
                Lists.immutable.of(
                        new Outputs.Document(csv, () -> Told.bytes(AtlasCsv.write(curves, units))),
                        new Outputs.Document(
                                pdf,
                                () -> AtlasPdf.bytes(
                                        curves, origin(), units, paper, "coldseam " + ToolVersion.read()))));
    }

    private String origin() {
        if (layers.fromHouse()) {
            return layers.first().isPresent() || layers.second().isPresent()
                    ? "build-ups named from the house file"
                    : "every junction of the house file between other build-ups";
        }
        return layers.build() == TypicalBuild.MASONRY
                ? "typical build-ups in masonry"
                : "typical build-ups in timber frame";
    }

    private void say(ImmutableList<AtlasCurve> curves) {
        long all = curves.sumOfInt(curve -> curve.points().size());
        long misfits = curves.sumOfInt(
                curve -> curve.points().count(point -> point.measures().isEmpty()));
        long wide = curves.sumOfInt(curve -> curve.points()
                .count(point ->
                        point.measures().isPresent() && !point.measures().get().met()));
        terminal.fold(curves.collect(AtlasCurve::detail).distinct().size() + " options, " + all + " values; "
                + misfits + " do not fit, and say why."
                + (wide == 0 ? "" : " " + wide + " have a wider interval than asked for."));
    }
}
