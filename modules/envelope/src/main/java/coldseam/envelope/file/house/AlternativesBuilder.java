package coldseam.envelope.file.house;

import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Selector;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Position;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Makes the alternatives of a house file that has been checked, with their places for what is checked later. */
final class AlternativesBuilder {

    private final FileHouse file;
    private final ImmutableMap<String, Assembly> assemblies;

    AlternativesBuilder(FileHouse file, ImmutableMap<String, Assembly> assemblies) {
        this.file = file;
        this.assemblies = assemblies;
    }

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
        FileAlternatives.OfJunctions it = decision.value();
        return new LoadedHouse.PlacedDecision(
                new Decision(
                        decision.name(),
                        new About.Junctions(
                                new Selector(it.kinds(), it.surfaces().collect(Located::value))),
                        it.described().toPrice(),
                        it.options()
                                .collect(option -> new Option(
                                        option.title(),
                                        option.change(),
                                        option.price().toPrice(),
                                        option.remark()))),
                decision.place(),
                it.surfaces(),
                it.options().collect(option -> option.detail().place()),
                it.options().collect(option -> FileChoice.placed(option.parameters())));
    }

    private LoadedHouse.PlacedDecision points(Named<FileAlternatives.OfPoints> decision) {
        FileAlternatives.OfPoints it = decision.value();
        return new LoadedHouse.PlacedDecision(
                new Decision(
                        decision.name(),
                        new About.Points(decision.name()),
                        it.described().toPrice(),
                        it.options()
                                .collect(option -> new Option(
                                        option.title(),
                                        option.change(),
                                        option.price().toPrice(),
                                        option.remark()))),
                decision.place(),
                Lists.immutable.empty(),
                it.options().collect(option -> option.detail().place()),
                it.options()
                        .collect(option -> option.parameters()
                                .collect(each -> new Named<>(
                                        each.name(),
                                        new Located<>(
                                                each.value().value(),
                                                each.value().place()),
                                        each.place()))));
    }

    private LoadedHouse.PlacedDecision assembly(Named<FileAlternatives.OfAssembly> decision) {
        FileAlternatives.OfAssembly it = decision.value();
        return unplaced(
                new Decision(
                        decision.name(),
                        new About.OfAssembly(decision.name()),
                        it.described().toPrice(),
                        it.options()
                                .collect(option -> new Option(
                                        option.title(),
                                        new Change.BuildUp(buildUp(decision.name(), option)),
                                        option.price().toPrice(),
                                        option.remark()))),
                decision.place(),
                it.options().collect(FileAlternatives.BuildUpOption::place));
    }

    private LoadedHouse.PlacedDecision openings(Named<FileAlternatives.OfOpenings> decision) {
        FileAlternatives.OfOpenings it = decision.value();
        return unplaced(
                new Decision(
                        decision.name(),
                        new About.Openings(file.openings()
                                .select(each -> it.openings().contains(each.name()))
                                .flatCollect(each -> each.value().openings(each.name()))
                                .collect(each -> each.name())),
                        it.described().toPrice(),
                        it.options()
                                .collect(option -> new Option(
                                        option.name(),
                                        option.change(),
                                        option.price().toPrice(),
                                        option.remark()))),
                decision.place(),
                it.options().collect(FileAlternatives.OpeningOption::place));
    }

    private static LoadedHouse.PlacedDecision unplaced(
            Decision decision, Position place, ImmutableList<Position> options) {
        return new LoadedHouse.PlacedDecision(
                decision, place, Lists.immutable.empty(), options, options.collect(each -> Lists.immutable.empty()));
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
