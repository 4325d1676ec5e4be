package coldseam.junctions.detail;

import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.envelope.file.house.FileBears;
import coldseam.envelope.file.house.InsulationClaim;
import coldseam.envelope.file.house.SourceText;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Positional;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Maps;

/**
 * What every detail file says, whether of a junction, a point or a corner; README.md beside the built-in ones explains each key.
 *
 * @param suits what it can be built in; empty for both
 * @param takesDown parts of an old house that must come down for it
 * @param needs layers that must be there, such as {@code wall.insulation}; for a point their roles
 * @param thickness allowed, by layer; for a point by role, {@code surface} for the whole
 * @param requires conditions such as {@code upstand >= 150 mm}
 * @param parameters lengths of its own
 * @param materials of its own
 * @param lines of its own
 */
record FileText(
        String name,
        Rank rank,
        @Default("") ImmutableSet<Suits.Work> suits,
        @Default("") ImmutableList<String> takesDown,
        String looksLike,
        @Size(max = 100) @Default("") ImmutableList<Located<String>> needs,
        @Size(max = 100) @Default("") ImmutableList<Named<FileSpan>> thickness,
        @Size(max = 100) @Default("") ImmutableList<Located<String>> requires,
        @Size(max = 100) @Default("") ImmutableList<Named<FileParameter>> parameters,
        @Size(max = 100) @Default("") ImmutableList<Named<FileOwnMaterial>> materials,
        @Size(max = 100) @Default("") ImmutableList<Named<Located<String>>> lines,
        @Size(max = 100) ImmutableList<String> order,
        FileConnections connections,
        @Size(max = 100) ImmutableList<String> failures,
        @Size(max = 100) ImmutableList<Photograph> photographs,
        @Size(max = 100) @Default("") ImmutableList<String> cautions) {

    /** Least and most. */
    @Positional
    record FileSpan(
            @Unit(Dimension.THICKNESS) @Bounds(atLeast = "0 mm")
            double least,

            @Unit(Dimension.THICKNESS) @Bounds(above = "0 mm")
            double most) {}

    /**
     * A length of the detail's own.
     *
     * @param value it has unless a copy of the file says otherwise
     * @param from least that makes sense
     * @param to most that makes sense
     * @param insulates whether a greater value lets less heat through
     */
    record FileParameter(
            @Unit(Dimension.LENGTH) double value,
            @Unit(Dimension.LENGTH) double from,
            @Unit(Dimension.LENGTH) double to,
            String says,
            @Default("false") boolean insulates) {}

    /**
     * A material of the detail's own.
     *
     * @param conductivity W/(m·K); what conducts less than 0.018 holds a vacuum (common practice, no source), which nobody saws to
     *     the shape of a detail
     * @param insulates whether it counts for the pen line
     * @param insulatesSource the source that says so, where it conducts more than insulation does
     * @param bears where it may stand as insulation
     * @param source where the conductivity comes from
     */
    record FileOwnMaterial(
            @Unit(Dimension.CONDUCTIVITY)
            @Bounds(
                    atLeast = "0.018 W/(m·K)",
                    atMost = "500 W/(m·K)",
                    usual = "boards 0.022 to 0.045, insulating blocks 0.05 to 0.2, metals 15 to 380 W/(m·K)")
            double conductivity,

            Optional<Boolean> insulates,
            Optional<String> insulatesSource,
            Optional<FileBears> bears,
            String source,
            @Default("declared") Provenance.Sureness sureness) {

        public FileOwnMaterial {
            InsulationClaim.check(conductivity, insulates, insulatesSource);
            SourceText.require("source", source);
        }

        Material named(String name) {
            return new Material(
                    name,
                    conductivity,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    insulates.orElse(conductivity <= Material.INSULATES_UP_TO),
                    insulatesSource,
                    Maps.immutable.empty(),
                    bears.map(FileBears::sources).orElse(Maps.immutable.empty()),
                    Material.Carries.SPANS,
                    false,
                    OptionalDouble.empty(),
                    new Provenance(source, sureness));
        }
    }
}
