package coldseam.junctions.hand;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.envelope.KindForm;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.Faults;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionResult.Leg.Part;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailDrawing;
import coldseam.junctions.detail.FileConnections;
import coldseam.junctions.detail.Suits;
import coldseam.junctions.kind.Vector;
import coldseam.junctions.plan.SectionEnd;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import coldseam.junctions.section.Surroundings;
import coldseam.junctions.section.WarmFaces;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/**
 * A section drawn by hand as a detail: it is computed as it stands, whatever layers the house has.
 *
 * @param drawn section with its junction block
 */
public record HandDrawing(DrawnSection drawn) implements DetailDrawing {

    /** m of a cut; less is where two regions meet. */
    private static final double LAYER = 0.001;

    /** The detail of a section file with a junction block; faults where it lacks what a detail needs. */
    public static Optional<Detail> detail(String id, DrawnSection drawn, Faults faults) {
        Optional<FileDrawnSection.FileJunction> junction = drawn.file().junction();
        if (junction.isEmpty()) {
            faults.add(
                    drawn.file().place(),
                    "a section that is chosen as a detail needs the key junction",
                    "",
                    "add it: junction: {kind: …, legs: […]}");
            return Optional.empty();
        }
        int before = faults.count();
        environments(drawn, faults);
        if (faults.count() == before) {
            ImmutableList<Composition.Face> faces = faces(drawn.section());
            new HandLegs(drawn, faces).check(faults);
            new HandBounds(drawn, faces).check(faults);
        }
        if (faults.count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Detail(
                id,
                junction.get().kind(),
                Lists.immutable.empty(),
                drawn.file().section(),
                junction.get().rank(),
                Suits.EVERYWHERE,
                junction.get().looksLike(),
                Lists.immutable.empty(),
                junction.get()
                        .connections()
                        .orElseGet(FileConnections::notShown)
                        .byControl(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Optional.empty(),
                new HandDrawing(drawn),
                true));
    }

    /** Adds what keeps a section from being one through a junction, whatever its legs are. */
    private static void environments(DrawnSection drawn, Faults faults) {
        ImmutableList<String> names = drawn.section().environments().collect(each -> each.name());
        if (!names.contains(Surroundings.INDOOR) || names.size() < 2 || names.size() > 3) {
            faults.add(
                    drawn.file().place(),
                    "a section that is chosen as a detail needs its environments",
                    names.makeString(", "),
                    "indoor and one or two others",
                    "name them so");
        }
        ImmutableList<String> unseen = names.reject(name -> drawn.section()
                .boundaries()
                .anySatisfy(each -> each.environment().equals(name)));
        if (unseen.notEmpty()) {
            faults.add(
                    drawn.file().place(),
                    "a section that is chosen as a detail needs a boundary for each environment",
                    "none faces " + unseen.makeString(", "),
                    "at least one each",
                    "add it to boundaries");
        }
        if (drawn.file().axisymmetric()) {
            faults.add(
                    drawn.file().place(),
                    "a section that is chosen as a detail of a junction is a plane one",
                    "axisymmetric: true",
                    "axisymmetric: false",
                    "draw it along the junction, or list it under points");
        }
    }

    /**
     * Its section as it stands.
     *
     * @throws DetailDoesNotFit where a leg is not the surface that it stands for
     */
    public Composition composition(String who, JunctionSetup setup) {
        ImmutableList<Phrase> misfits = HandMisfits.of(drawn, faces(drawn.section()), setup);
        if (misfits.notEmpty()) {
            throw new DetailDoesNotFit(misfits.collect(each ->
                    Phrase.of(who + " is drawn by hand for another house: ").and(each)));
        }
        Section section = drawn.section();
        ImmutableList<FileDrawnSection.FileLeg> legs =
                drawn.file().junction().orElseThrow().legs();
        ImmutableList<Composition.Face> faces = faces(section);
        ImmutableList<Geometry> ends = legs.collect(drawn::cut);
        ImmutableList<JunctionResult.Leg> plane = legs.collectWithIndex((leg, i) -> new JunctionResult.Leg(
                part(setup, i),
                leg.name(),
                leg.transmittance(),
                drawn.unit() * leg.external(),
                drawn.unit() * leg.internal(),
                drawn.unit() * leg.insulation()));
        double weakest = legs.collectDouble(leg -> 1 / leg.transmittance() - resistances())
                .min();
        ImmutableList<SectionPlan.Piece> pieces = section.regions().collect(HandDrawing::piece);
        return new Composition(
                section,
                surfaceSection(),
                SectionPlan.of(pieces, pieces.collect(SectionPlan.Piece::fill), SectionEnd.of(section)),
                plane,
                legs.collect(FileDrawnSection.FileLeg::factor),
                surroundings(legs),
                faces,
                pastTheEnds(faces, ends),
                Lists.immutable.of(ends.getFirst(), ends.getLast()),
                Math.max(1e-6, weakest),
                OptionalDouble.empty(),
                Lists.immutable
                        .of("The section is drawn by hand: it does not follow the house's layers.")
                        .newWithAll(
                                setup.kind().form().framed()
                                        ? Lists.immutable.of(
                                                "fRsi is read with 0.25 m²·K/W on the frame, too: a drawing by"
                                                        + " hand does not say which part is the frame.")
                                        : Lists.immutable.empty()));
    }

    /** Both legs of a thing are of the one build-up; of two the first is the first. */
    private static Part part(JunctionSetup setup, int leg) {
        KindForm form = setup.kind().form();
        if (leg == 0 || form.second() == KindForm.Second.THING) {
            return Part.FIRST;
        }
        return form.framed() ? Part.OPENING : Part.SECOND;
    }

    private double resistances() {
        Section section = drawn.section();
        double indoor = section.environments()
                .detect(each -> each.name().equals(Surroundings.INDOOR))
                .surfaceResistance();
        return indoor
                + section.environments()
                        .reject(each -> each.name().equals(Surroundings.INDOOR))
                        .collectDouble(each -> each.surfaceResistance())
                        .min();
    }

    private Surroundings surroundings(ImmutableList<FileDrawnSection.FileLeg> legs) {
        ImmutableList<Surroundings.Space> spaces = drawn.section()
                .environments()
                .reject(each -> each.name().equals(Surroundings.INDOOR))
                .collectWithIndex((each, i) -> new Surroundings.Space(
                        each.name(), legs.get(Math.min(i, legs.size() - 1)).factor(), each.surfaceResistance()));
        return new Surroundings(spaces.getFirst(), spaces.getLast());
    }

    private Section surfaceSection() {
        Section section = drawn.section();
        return new Section(
                section.name() + ", for surface temperatures",
                section.symmetry(),
                section.regions(),
                section.environments(),
                section.boundaries()
                        .collect(each -> each.environment().equals(Surroundings.INDOOR)
                                ? new Boundary(each.environment(), each.path(), OptionalDouble.of(WarmFaces.WALL_RSI))
                                : each),
                section.probes());
    }

    private static Material material(Region region) {
        boolean insulates = region.conductivity() <= Material.INSULATES_UP_TO;
        return Material.conducting(region.material(), region.conductivity(), insulates, "the section file");
    }

    private static SectionPlan.Piece piece(Region region) {
        Material material = material(region);
        return new SectionPlan.Piece(
                region.outline(),
                material,
                material.insulates() ? Role.INSULATION : Role.STRUCTURE,
                true,
                new SectionPlan.Origin.ByHand(region.material()));
    }

    /** Whether a region, or another of its material, is a layer of a leg, as its cut shows it: such are held to the house's. */
    static boolean alongACut(
            Region region, Section section, ImmutableList<Composition.Face> faces, ImmutableList<Geometry> cuts) {
        return section.regions()
                .select(each ->
                        each.material().equals(region.material()) && each.conductivity() == region.conductivity())
                .collect(each -> Shapes.of(each.outline().corners()))
                .anySatisfy(drawn -> faces.select(face -> face.conductivity() == region.conductivity())
                        .collect(face -> Shapes.intersection(face.area(), drawn))
                        .anySatisfy(seen ->
                                cuts.anySatisfy(cut -> seen.intersection(cut).getLength() > LAYER)));
    }

    /**
     * What insulates between the legs' cuts, is none of their layers, none of the built-in list, and conducts less than any of its
     * name: its conductivity stands in the drawing alone.
     *
     * @param house its materials
     */
    public ImmutableList<Region> ofItsOwn(ImmutableList<Material> house) {
        Section section = drawn.section();
        ImmutableList<Composition.Face> faces = faces(section);
        ImmutableList<Geometry> cuts =
                drawn.file().junction().orElseThrow().legs().collect(drawn::cut);
        return section.regions()
                .select(region -> region.conductivity() <= Material.INSULATES_UP_TO
                        && MaterialLibrary.called(region.material()).isEmpty()
                        && !alongACut(region, section, faces, cuts))
                .reject(region -> house.anySatisfy(each -> each.name().equals(region.material())
                        && region.conductivity() >= (1 - HandBounds.SHARE) * each.conductivity()))
                .distinctBy(region -> region.material() + " " + region.conductivity());
    }

    static ImmutableList<Composition.Face> faces(Section section) {
        MutableList<Composition.Face> faces = Lists.mutable.empty();
        Geometry covered = Shapes.nothing();
        for (Region region : section.regions().toReversed()) {
            Geometry area = Shapes.of(region.outline().corners());
            Geometry seen = Shapes.difference(area, covered);
            if (!seen.isEmpty()) {
                faces.add(new Composition.Face(
                        seen, region.conductivity(), region.conductivity() <= Material.INSULATES_UP_TO));
            }
            covered = Shapes.union(Lists.immutable.of(covered, area));
        }
        return faces.reverseThis().toImmutable();
    }

    /** What insulates, carried on straight past the ends, so that they do not narrow it. */
    private static Geometry pastTheEnds(ImmutableList<Composition.Face> faces, ImmutableList<Geometry> ends) {
        Geometry insulation =
                Shapes.union(faces.select(Composition.Face::insulates).collect(Composition.Face::area));
        Point middle = Shapes.point(Shapes.union(faces.collect(Composition.Face::area))
                .getCentroid()
                .getCoordinate());
        MutableList<Geometry> parts = Lists.mutable.of(insulation);
        for (Geometry end : ends) {
            for (Geometry met : Shapes.parts(insulation.intersection(end)).select(each -> each instanceof LineString)) {
                Coordinate[] line = met.getCoordinates();
                Point a = Shapes.point(line[0]);
                Point b = Shapes.point(line[line.length - 1]);
                Vector normal = Vector.between(b, a).left().times(1 / a.distance(b));
                boolean outwards = normal.dot(Vector.between(middle, a)) > 0;
                Vector more = normal.times(outwards ? Composer.PAST_THE_CUT : -Composer.PAST_THE_CUT);
                parts.add(Shapes.of(Lists.immutable.of(a, b, more.from(b), more.from(a))));
            }
        }
        return Shapes.union(parts);
    }
}
