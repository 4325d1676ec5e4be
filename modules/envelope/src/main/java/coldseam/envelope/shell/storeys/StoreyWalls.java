package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetNames;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.StepZones;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Facets of storeys' upright faces: walls with their names, build-ups and what they face, steps of the walls, and gables. */
final class StoreyWalls {

    /** What a storey stands on in a cell where it is the lowest. */
    interface Standing {
        Optional<Body.Base> base(int storey, int cell);
    }

    private final House house;
    private final Plan plan;
    private final Stacks stacks;
    private final GivenSides given;
    private final StoreyLevels levels;
    private final Heated heated;
    private final ImmutableList<Optional<RoofForm>> forms;
    private final ImmutableMap<Integer, StoreyRoof> roofs;
    private final StoreyGround ground;
    private final Standing standing;
    private double widestJog;
    private final MutableList<Facet> facets = Lists.mutable.empty();
    private final MutableList<Facet> gables = Lists.mutable.empty();

    /**
     * @param forms of each storey's roof
     * @param roofs over the top storeys, by their indices
     */
    StoreyWalls(
            House house,
            Plan plan,
            Stacks stacks,
            GivenSides given,
            StoreyLevels levels,
            Heated heated,
            ImmutableList<Optional<RoofForm>> forms,
            ImmutableMap<Integer, StoreyRoof> roofs,
            StoreyGround ground,
            Standing standing) {
        this.house = house;
        this.plan = plan;
        this.stacks = stacks;
        this.given = given;
        this.levels = levels;
        this.heated = heated;
        this.forms = forms;
        this.roofs = roofs;
        this.ground = ground;
        this.standing = standing;
        build();
    }

    /** Walls, then steps of the walls. */
    ImmutableList<Facet> facets() {
        return facets.toImmutable();
    }

    /** What stands over the eaves, or beside a lower roof. */
    ImmutableList<Facet> gables() {
        return gables.toImmutable();
    }

    /** m, of the widest jog between two stacks; zero without. */
    double widestJog() {
        return widestJog;
    }

    private void build() {
        WallPieces pieces = new WallPieces(plan, stacks, given, levels, heated, forms, beside());
        Map<WallPieces.Owner, ImmutableList<ImmutableList<Vertex>>> outlines = pieces.outlines();
        widestJog = pieces.widestJog();
        MutableList<Facet> steps = Lists.mutable.empty();
        outlines.forEach((owner, list) -> {
            if (owner.part() == WallPieces.Part.GABLE) {
                list.forEach(outline -> gables.add(
                        stacks.top(owner.storey())
                                ? roofs.get(owner.storey()).gable(owner, outline)
                                : besideRoof(owner, outline)));
                return;
            }
            // Beside walls a hair out of line a strip may be left that hangs together with nothing.
            ImmutableList<ImmutableList<Vertex>> walls =
                    owner.isWall() ? list.size() == 1 ? list : list.reject(StoreyWalls::hair) : Lists.immutable.empty();
            boolean split =
                    outlines.containsKey(new WallPieces.Owner(owner.storey(), owner.line(), WallPieces.Part.WALL));
            String part = switch (owner.part()) {
                case BELOW_GROUND -> split ? ", below ground" : "";
                case UNDER_FLOOR -> ", under the floor beside it";
                case WALL, GABLE -> "";
            };
            walls.forEachWithIndex((outline, i) -> {
                String name = wall(owner).name() + part;
                Facet wall = wallFacet(owner, outline);
                facets.add((owner.part() == WallPieces.Part.UNDER_FLOOR ? wall.partNamed(name) : wall)
                        .pieceNamed(walls.size() == 1 ? name : name + " (" + (i + 1) + ")"));
            });
            String step = "step of the walls, " + stacks.storey(owner.storey()).name();
            list.reject(walls::contains)
                    .forEach(outline -> steps.add(
                            LevelFaces.step(step, levels.traits(stacks, owner.storey(), Facet.Mark.STEP), outline, 0)));
        });
        facets.addAllIterable(FacetNames.numbered(steps));
        ImmutableList<Facet> over = FacetNames.numbered(gables);
        for (int i = 0; i < gables.size(); i++) {
            gables.set(i, over.get(i));
        }
    }

    /** A wall's build-up, whatever the file calls it. */
    private Optional<Assembly> layers(WallPieces.Owner owner) {
        return house.assembly(wall(owner).assembly()).map(built -> built.named(""));
    }

    private WallPieces.Beside beside() {
        return new WallPieces.Beside() {
            @Override
            public boolean reachesGround(WallPieces.Owner owner, int lowest, WallPieces.Piece piece) {
                return ground.reaches(wall(owner), lowest, piece);
            }

            @Override
            public boolean alike(WallPieces.Owner one, WallPieces.Owner other) {
                boolean walls = one.isWall() && other.isWall();
                return walls
                        && layers(one).equals(layers(other))
                        && wall(one).exposure().equals(wall(other).exposure());
            }

            @Override
            public boolean isOne(WallPieces.Owner owner) {
                return stacks.top(owner.storey()) && isOneWithItsGable(owner);
            }

            @Override
            public long ground(Vertex point) {
                return ground.at(point);
            }

            @Override
            public boolean closedBelow(int storey, int cell) {
                return stacks.lowest(storey)
                        || standing.base(storey, cell).map(Body.Base::onGround).orElse(false);
            }
        };
    }

    /** Whether the gable is built as the wall is and an opening of either reaches over the eaves and under them. */
    private boolean isOneWithItsGable(WallPieces.Owner owner) {
        Body.Wall wall = wall(owner);
        Optional<String> gable = stacks.stack(owner.storey()).roof().gableAssembly();
        RoofForm form = forms.get(owner.storey()).orElseThrow();
        double eaves = Vertex.metres(form.eaves() - levels.floors().get(owner.storey()));
        return form.gable(owner.line().number())
                && (gable.isEmpty() || gable.equals(wall.assembly()))
                && house.openings()
                        .anySatisfy(opening -> Facet.isOrIsUnder(wall.name(), opening.surface())
                                && !opening.inGableWithoutSill()
                                && opening.sill() < eaves
                                && opening.sill() + opening.height() > eaves);
    }

    private static boolean hair(ImmutableList<Vertex> outline) {
        return outline.allSatisfy(
                a -> outline.getFirst().at(0).minus(a.at(0)).length() <= StepZones.HAIR * Vertex.PER_METRE);
    }

    private Body.Wall wall(WallPieces.Owner owner) {
        return stacks.storey(owner.storey()).walls().get(owner.line().number());
    }

    /** Under a floor beside it a wall faces what that floor does; where several kinds are, the ground. */
    private Exposure exposure(WallPieces.Owner owner, Body.Wall wall) {
        return switch (owner.part()) {
            case BELOW_GROUND -> Exposure.ground();
            case UNDER_FLOOR ->
                plan.bounds()
                        .select(bound ->
                                bound.runs().anySatisfy(run -> run.tag().equals(owner.line())))
                        .flatCollect(bound -> Lists.immutable.of(bound.left(), bound.right()))
                        .select(cell -> cell >= 0 && !plan.in(cell, owner.storey()))
                        .flatCollect(cell -> heated.spans()
                                .get(cell)
                                .flatCollect(span -> standing.base(span.first(), cell).map(Body.Base::exposure).stream()
                                        .toList()))
                        .minByOptional(each -> each.kind().ordinal())
                        .orElse(Exposure.ground());
            case WALL, GABLE -> wall.exposure();
        };
    }

    private Facet wallFacet(WallPieces.Owner owner, ImmutableList<Vertex> outline) {
        Body.Wall wall = wall(owner);
        Optional<Assembly> assembly = house.assembly(wall.assembly());
        Facet.Mark mark = Facet.Mark.NONE;
        if (stacks.lowest(owner.storey())
                && stacks.stack(owner.storey()).base().kind() == Body.Base.Kind.HEATED_CELLAR) {
            mark = Facet.Mark.CELLAR;
        }
        int side = owner.line().number();
        if (forms.get(owner.storey()).map(form -> form.gable(side)).orElse(false)) {
            mark = Facet.Mark.UNDER_GABLE;
        }
        return new Facet(
                wall.name(),
                Body.Use.WALL,
                assembly,
                exposure(owner, wall),
                outline,
                levels.traits(stacks, owner.storey(), mark));
    }

    /** A wall that only a lower roof's own height leaves upright. */
    private Facet besideRoof(WallPieces.Owner owner, ImmutableList<Vertex> outline) {
        Body.Storey storey = stacks.storey(owner.storey());
        Body.LowerRoof lower = storey.lowerRoof().orElseThrow();
        Optional<String> low = storey.walls().get(lower.lowSide()).assembly();
        Optional<Assembly> assembly = house.assembly(lower.wall().isPresent() ? lower.wall() : low);
        return new Facet(
                "wall beside the lower roof over " + storey.name(),
                Body.Use.WALL,
                assembly,
                Exposure.outdoors(),
                outline,
                levels.traits(stacks, owner.storey(), Facet.Mark.NONE));
    }
}
