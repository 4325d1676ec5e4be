package coldseam.junctions.detail;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.envelope.file.house.FileBears;
import coldseam.envelope.file.house.InsulationClaim;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Positional;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Maps;

/**
 * What every detail file says, whether of a junction, a point or a corner; README.md beside the built-in ones explains each key.
 */
@Noun("a detail")
sealed interface FileText permits FileDetail, FilePoint, FileCorner {

    /** Its id. */
    Located<String> id();

    BridgeKind kind();

    String name();

    Rank rank();

    /** What it can be built in; empty for both. */
    ImmutableSet<Suits.Work> suits();

    /** Parts of an old house that must come down for it. */
    ImmutableList<String> takesDown();

    String looksLike();

    /** Layers that must be there. */
    ImmutableList<Located<String>> needs();

    /** Allowed, by layer. */
    ImmutableList<Named<FileSpan>> thickness();

    /** Conditions such as {@code upstand >= 150 mm}. */
    ImmutableList<Located<String>> requires();

    /** Lengths of its own. */
    ImmutableList<Named<FileParameter>> parameters();

    /** Materials of its own. */
    ImmutableList<Named<FileOwnMaterial>> materials();

    /** Lines of its own. */
    ImmutableList<Named<Located<String>>> lines();

    ImmutableList<String> order();

    FileConnections connections();

    ImmutableList<String> failures();

    ImmutableList<Photograph> photographs();

    ImmutableList<String> cautions();

    /** Empty where the file gives none. */
    OptionalDouble amount();

    Cost.Per per();

    /** Reads its drawing; adds what is wrong to the faults. */
    DetailDrawing read(String content, Faults faults);

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
     * @param says what it is
     */
    record FileParameter(
            @Unit(Dimension.LENGTH) double value,
            @Unit(Dimension.LENGTH) double from,
            @Unit(Dimension.LENGTH) double to,
            String says) {}

    /**
     * A material of the detail's own.
     *
     * @param conductivity W/(m·K)
     * @param insulates whether it counts for the pen line
     * @param insulatesSource the source that says so, where it conducts more than insulation does
     * @param bears where it may stand as insulation
     * @param source where the conductivity comes from
     */
    record FileOwnMaterial(
            @Unit(Dimension.CONDUCTIVITY) @Bounds(above = "0 W/(m·K)")
            double conductivity,

            Optional<Boolean> insulates,
            Optional<String> insulatesSource,
            Optional<FileBears> bears,
            String source,
            @Default("declared") Provenance.Sureness sureness) {

        public FileOwnMaterial {
            InsulationClaim.check(conductivity, insulates, insulatesSource);
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
                    OptionalDouble.empty(),
                    new Provenance(source, sureness));
        }
    }
}
