package coldseam.envelope.file.house;

import coldseam.envelope.Opening;
import coldseam.envelope.Retrofit;
import coldseam.files.Default;
import coldseam.files.Defines;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Refers;
import coldseam.files.SelfChecking;
import coldseam.files.Size;
import coldseam.files.Words;
import java.util.Optional;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** The house file, whole. */
@Noun("a house file")
@Doc("A house: its site, what it is built of, its shape, and the choices made for its junctions.")
record FileHouse(
        @Doc("Name of the house, as the audit prints it.") Located<String> house,

        @Doc("For whom the audit is made, and by whom.") @Default("")
        FileSubmittal submittal,

        @Doc("Climate, ground and conventions.") FileSite site,

        @Doc("Of an old house, what is built new or taken down; left out, everything is built new.")
        Optional<FileRetrofit> retrofit,

        @Size(max = 500)
        @Doc("The house's own materials by name; one named like a built-in one takes its place.")
        @Default("")
        @Defines("material")
        ImmutableList<Named<FileMaterial>> materials,

        @Size(max = 200) @Doc("Build-ups of layers, by name.") @Defines("assembly")
        ImmutableList<Named<FileAssembly>> assemblies,

        @Size(max = 100)
        @Doc("Unheated spaces and heated neighbours that walls, floors or roofs face, by name.")
        @Default("")
        @Defines("neighbour")
        ImmutableList<Named<FileNeighbour>> neighbours,

        @Doc("The shape: by storeys, or by explicit surfaces.")
        FileBody body,

        @Size(max = 400) @Doc("Windows and doors, by name.") @Default("") @Defines("opening")
        ImmutableList<Named<FileOpening>> openings,

        @Size(max = 400) @Doc("Which detail for which junctions; the first that matches wins.") @Default("")
        ImmutableList<FileChoice> junctions,

        @Size(max = 400) @Doc("psi values the house brings along, with their source.") @Default("")
        ImmutableList<FileOwnPsi> ownPsi,

        @Size(max = 400)
        @Doc("Junctions that the shape cannot show, such as partitions and balconies, by name.")
        @Default("")
        @Defines("seam")
        ImmutableList<Named<FileSeam>> seams,

        @Size(max = 400)
        @Doc("Posts, columns, brackets, pipes and fasteners that go through a surface's insulation, by name.")
        @Default("")
        @Defines("points")
        ImmutableList<Named<FilePoints>> points,

        @Size(max = 100)
        @Doc(
                "Details of corners, by their ids in the catalogue or the paths of corner files beside this file; each is taken wherever the edges it is for meet, and goes before what their own details make of the corner.")
        @Default("")
        @Refers("corner detail")
        ImmutableList<Located<String>> corners,

        @Doc("What the audit holds junctions and points to.") @Default("")
        FileLimits limits,

        @Doc("Prices for the money columns.") @Default("") FilePrices prices,

        @Doc("What might be built otherwise, for \"coldseam compare\".") @Default("")
        FileAlternatives alternatives)
        implements SelfChecking {

    /** Most openings, rows counted out; every two of them are held against each other. */
    private static final int MOST_OPENINGS = 400;

    /** What lies beside every house, however it is called: sections tell what they face by its name. */
    private static final ImmutableSet<String> PLACES = Sets.immutable.with(
            "outdoors",
            "outdoor",
            "outdoor air",
            "outside",
            "outside air",
            "open air",
            "ground",
            "soil",
            "earth",
            "crawl space",
            "indoors",
            "indoor",
            "inside",
            "rooms");

    /** What the roof's own cold loft is called. */
    private static final String LOFT = "loft";

    @Override
    public void check(Faults faults) {
        if (house != null) {
            PageText.line(house, faults);
            PageText.praise(house, faults);
        }
        int count = (int) openings.sumOfInt(each -> each.value().count());
        if (count > MOST_OPENINGS) {
            faults.add(
                    openings.getFirst().place(),
                    "a house has too many openings",
                    count + ", those in rows counted one by one",
                    "up to " + MOST_OPENINGS,
                    "divide it, or join openings that stand side by side");
        }
        AlternativesChecks.check(this, faults);
        LayerChecks.check(this, faults);
        assemblies
                .select(each -> each.name().equals(HouseFile.NONE) || Retrofit.OTHER_MEASURES.contains(each.name()))
                .forEach(each -> reserved(each, faults));
        retrofit.ifPresent(each -> each.check(assemblies.collect(Named::name), openings.collect(Named::name), faults));
        ImmutableSet<String> places = body != null && body.hasColdLoft() ? PLACES.newWith(LOFT) : PLACES;
        neighbours.select(each -> places.contains(Words.aloud(each.name()))).forEach(each -> reserved(each, faults));
    }

    /** Those that are decided together. */
    ImmutableList<Opening> openings(FileAlternatives.OfOpenings decision) {
        return openings.select(each -> decision.openings().contains(each.name()))
                .flatCollect(each -> each.value().openings(each.name()));
    }

    private static void reserved(Named<?> thing, Faults faults) {
        faults.add(thing.place(), "this name has a meaning of its own", '"' + thing.name() + '"', "choose another");
    }
}
