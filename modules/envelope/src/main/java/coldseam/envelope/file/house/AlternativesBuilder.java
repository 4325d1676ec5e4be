package coldseam.envelope.file.house;

import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.files.Located;
import coldseam.files.Named;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Makes the alternatives of a house file that has been checked, with their places for what is checked later. */
record AlternativesBuilder(FileHouse file, ImmutableMap<String, Assembly> assemblies) {

    /** In the file's order. */
    ImmutableList<LoadedHouse.PlacedDecision> decisions() {
        FileAlternatives all = file.alternatives();
        return all.junctions()
                .collect(this::junctions)
                .newWithAll(all.assemblies().collect(this::assembly))
                .newWithAll(all.openings().collect(this::openings))
                .newWithAll(all.points().collect(this::points));
    }

    private LoadedHouse.PlacedDecision junctions(Named<FileAlternatives.OfJunctions> decision) {
        FileSelector which = decision.value().which();
        return placed(
                decision,
                new About.Junctions(which.selector()),
                FileAlternatives.DetailOption::change,
                which.surfaces(),
                option -> FileChoice.placed(option.parameters()));
    }

    private LoadedHouse.PlacedDecision points(Named<FileAlternatives.OfPoints> decision) {
        return placed(
                decision,
                new About.Points(decision.name()),
                FileAlternatives.PointOption::change,
                Lists.immutable.empty(),
                option -> FileChoice.placed(option.parameters()));
    }

    private LoadedHouse.PlacedDecision assembly(Named<FileAlternatives.OfAssembly> decision) {
        return placed(
                decision,
                new About.OfAssembly(decision.name()),
                option -> new Change.BuildUp(buildUp(decision.name(), option)),
                Lists.immutable.empty(),
                option -> Lists.immutable.empty());
    }

    private LoadedHouse.PlacedDecision openings(Named<FileAlternatives.OfOpenings> decision) {
        return placed(
                decision,
                new About.Openings(file.openings(decision.value()).collect(Opening::name)),
                FileAlternatives.OpeningOption::change,
                Lists.immutable.empty(),
                option -> Lists.immutable.empty());
    }

    private static <O extends FileAlternatives.Choosable> LoadedHouse.PlacedDecision placed(
            Named<? extends FileAlternatives.Decides<O>> decision,
            About about,
            Function<O, Change> change,
            ImmutableList<Located<String>> surfaces,
            Function<O, ImmutableList<Named<Located<Double>>>> parameters) {
        ImmutableList<O> options = decision.value().options();
        return new LoadedHouse.PlacedDecision(
                new Decision(
                        decision.name(),
                        about,
                        decision.value().price().toPrice(),
                        options.collect(option -> new Option(
                                option.title(),
                                change.apply(option),
                                option.price().toPrice(),
                                option.remark()))),
                decision.place(),
                surfaces,
                options.collect(FileAlternatives.Choosable::place),
                options.collect(parameters::apply));
    }

    /** The option's build-up under the name of the assembly whose place it takes. */
    private Assembly buildUp(String name, FileAlternatives.BuildUpOption option) {
        if (option.assembly().isPresent()) {
            return assemblies.get(option.assembly().get().value()).named(name);
        }
        FileAssembly described =
                file.assemblies().detect(each -> each.name().equals(name)).value();
        int which = described
                .layers()
                .indexOf(AlternativesChecks.meant(option, described).getOnly());
        Assembly assembly = assemblies.get(name);
        ImmutableList<Layer> layers = assembly.layers()
                .collectWithIndex((layer, index) ->
                        index == which ? layer.thick(option.thickness().orElseThrow()) : layer);
        return new Assembly(name, layers, assembly.fasteners(), assembly.gaps(), assembly.rain());
    }
}
