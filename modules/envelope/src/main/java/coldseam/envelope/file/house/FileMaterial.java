package coldseam.envelope.file.house;

import coldseam.envelope.Control;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

@Noun("a material")
@Doc("A homogeneous material.")
record FileMaterial(
        @Doc("Design thermal conductivity.")
        @Unit(Dimension.CONDUCTIVITY)
        @Bounds(
                atLeast = "0.003 W/(m·K)",
                atMost = "500 W/(m·K)",
                usual = "insulation 0.020 to 0.045, vacuum panels 0.007, wood 0.13, masonry 0.2 to 1.2, concrete 2"
                        + " W/(m·K)")
        double conductivity,

        @Doc("Water vapour resistance factor mu, dry side; 1 is still air.") @Bounds(atLeast = "1", atMost = "1e7")
        OptionalDouble vapourResistanceFactor,

        @Doc("True for metals, glass and the like, instead of a vapour resistance factor.") @Default("false")
        boolean vapourTight,

        @Doc("Density.") @Unit(Dimension.DENSITY) @Bounds(above = "0 kg/m³", atMost = "25000 kg/m³")
        OptionalDouble density,

        @Doc("Compressive strength at 10 % strain.")
        @Unit(Dimension.PRESSURE)
        @Bounds(above = "0 kPa", atMost = "500 MPa")
        OptionalDouble compressiveStrength,

        @Doc("Whether it counts as insulation; up to 0.065 W/(m·K) it does unless this says otherwise, up to 0.10"
                + " W/(m·K) it may.")
        Optional<Boolean> insulates,

        @Doc("Source that says that it counts as insulation, where it conducts more than 0.065 W/(m·K).")
        Optional<String> insulatesSource,

        @Doc("What a layer of it can control, each with the source that says so; a built-in material's own where"
                + " left out.")
        Optional<FileControls> controls,

        @Doc(
                "What it bears as insulation, each with the source that says so; a built-in material's own where left out.")
        Optional<FileBears> bears,

        @Doc(
                "Whether it is wood that carries, as in a wall of logs: joists bear on it, and wood spans its openings. A built-in"
                        + " material's own where left out, else false: floors and lintels of concrete lose more.")
        Optional<Boolean> timber,

        @Doc(
                "What a layer of it carries by itself: nothing (linings, screeds, foils); coat: nothing, and it is put on what is"
                        + " firm (plasters, renders, sheets glued on); fill: not so much as a coat (batts, loose fill); stands: itself"
                        + " and what stands on it, but no room's span (masonry); spans; or timber, which the key of that name says as"
                        + " well. A built-in material's own where left out, else it spans.")
        Optional<Material.Carries> carries,

        @Doc(
                "Share of the conductivity by which it may be off to either side, such as its declaration's class; 10 % where"
                        + " left out (common practice, no source).")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "2 %", atMost = "60 %", usual = "3 to 20 %")
        OptionalDouble within,

        @Doc("The thinnest layer of it there is; a built-in material's own where left out.")
        @Unit(Dimension.THICKNESS)
        @Bounds(above = "0 mm", atMost = "2 m")
        OptionalDouble thinnest,

        @Doc("The thickest layer of it there is; a built-in material's own where left out.")
        @Unit(Dimension.THICKNESS)
        @Bounds(above = "0 mm", atMost = "2 m")
        OptionalDouble thickest,

        @Doc("Where the conductivity comes from, such as a declaration of performance or a test report.")
        String source,

        @Doc("How well the value is known.") @Default("declared")
        Provenance.Sureness sureness) {

    /** W/(m·K); hardwood has 0.18, and what conducts more is no timber, whatever is said of it (judgement). */
    private static final double TIMBER_AT_MOST = 0.25;

    /** W/(m·K); the lightest softwoods that carry have some 0.09 (judgement). */
    private static final double TIMBER_AT_LEAST = 0.085;

    /** What a layer of a material can control, each with its source. */
    @Noun("what a material controls")
    @Doc("What a layer of a material can control when it is joined up, each with the source that says so.")
    record FileControls(
            @Doc("Source that says that it is airtight.") Optional<String> air,

            @Doc("Source that says that it sheds or keeps out water.")
            Optional<String> water,

            @Doc("Source that says that it slows vapour enough.")
            Optional<String> vapour) {

        public FileControls {
            SourceText.require("air", air);
            SourceText.require("water", water);
            SourceText.require("vapour", vapour);
        }

        ImmutableMap<Control, String> sources() {
            return SourceText.given(Maps.immutable.of(Control.AIR, air, Control.WATER, water, Control.VAPOUR, vapour));
        }
    }

    FileMaterial {
        if (vapourTight && vapourResistanceFactor.isPresent()) {
            throw new BadValueException(
                    "vapourResistanceFactor",
                    "a vapour-tight material has no vapour-resistance-factor",
                    String.valueOf(vapourResistanceFactor.getAsDouble()),
                    "remove one of the two keys");
        }
        InsulationClaim.check(conductivity, insulates, insulatesSource);
        if (saysTimber(timber, carries) && !(conductivity >= TIMBER_AT_LEAST && conductivity <= TIMBER_AT_MOST)) {
            throw new BadValueException(
                    timber.isPresent() ? "timber" : "carries",
                    "timber does not conduct as little or as much",
                    Phrase.of(conductivity, Dimension.CONDUCTIVITY),
                    Phrase.of(TIMBER_AT_LEAST, Dimension.CONDUCTIVITY)
                            .and(" to ")
                            .and(TIMBER_AT_MOST, Dimension.CONDUCTIVITY),
                    "remove timber, or correct the conductivity");
        }
        if (carries.isPresent() && timber.isPresent() && timber.get() != (carries.get() == Material.Carries.TIMBER)) {
            throw new BadValueException(
                    "carries",
                    "a material is timber, or it is not",
                    "carries: " + Words.word(carries.get()) + " beside timber: " + timber.get(),
                    "remove one of the two keys");
        }
        SourceText.require("source", source);
        SourceText.require("insulatesSource", insulatesSource);
    }

    /** Whether it conducts like wood, or somewhat less. */
    boolean mayBeTimber() {
        return conductivity > Material.INSULATES_UP_TO && conductivity <= TIMBER_AT_MOST;
    }

    private static boolean saysTimber(Optional<Boolean> timber, Optional<Material.Carries> carries) {
        return timber.orElse(false)
                || carries.filter(Material.Carries.TIMBER::equals).isPresent();
    }

    /** What it says that it carries, in either key. */
    Optional<Material.Carries> saidToCarry() {
        return saysTimber(timber, carries) ? Optional.of(Material.Carries.TIMBER) : carries;
    }

    /** The material, with what the built-in one of its name can do where this says nothing. */
    Material material(String name) {
        Optional<FileMaterial> known = MaterialLibrary.filed(name);
        return new Material(
                name,
                conductivity,
                vapourTight ? OptionalDouble.of(Double.POSITIVE_INFINITY) : vapourResistanceFactor,
                density,
                compressiveStrength,
                insulates.orElse(conductivity <= Material.INSULATES_UP_TO),
                insulatesSource,
                controls.or(() -> known.flatMap(FileMaterial::controls))
                        .map(FileControls::sources)
                        .orElse(Maps.immutable.empty()),
                bears.or(() -> known.flatMap(FileMaterial::bears))
                        .map(FileBears::sources)
                        .orElse(Maps.immutable.empty()),
                saidToCarry().or(() -> known.flatMap(FileMaterial::saidToCarry)).orElse(Material.Carries.SPANS),
                MaterialLibrary.isAir(name),
                within,
                new Provenance(source, sureness));
    }
}
