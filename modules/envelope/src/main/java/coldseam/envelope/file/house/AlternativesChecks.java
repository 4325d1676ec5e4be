package coldseam.envelope.file.house;

import coldseam.envelope.Control;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Nearest;
import coldseam.files.Position;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;

/** What of the alternatives can be checked only beside the rest of the house file. */
record AlternativesChecks(FileHouse house, Faults faults) {

    /** Adds every fault. */
    static void check(FileHouse house, Faults faults) {
        new AlternativesChecks(house, faults).check();
    }

    private void check() {
        unique(house.alternatives().names(), "each decision needs a name of its own");
        house.alternatives()
                .decisions()
                .forEach(each -> unique(
                        each.value().options().collect(option -> new Located<>(option.title(), option.place())),
                        "each option of a decision needs a name of its own"));
        house.alternatives().assemblies().forEach(this::assembly);
        house.alternatives().openings().forEach(this::openings);
        house.alternatives()
                .points()
                .forEach(each -> known(
                        new Located<>(each.name(), each.place()),
                        house.points().collect(Named::name),
                        "set of points"));
        openingsOnce();
        currencies();
    }

    private void unique(ImmutableList<Located<String>> names, String asked) {
        MutableSet<String> seen = Sets.mutable.empty();
        names.reject(each -> seen.add(each.value()))
                .forEach(each -> faults.add(each.place(), asked, '"' + each.value() + '"', "give it another name"));
    }

    private boolean known(Located<String> name, ImmutableList<String> all, String what) {
        if (!all.contains(name.value())) {
            faults.add(
                    name.place(),
                    "a decision is about a " + what + " of this file, by its name",
                    '"' + name.value() + '"',
                    all.isEmpty() ? "the file has none" : "one of " + Nearest.among(name.value(), all),
                    Nearest.meant(name.value(), all).orElse("correct the name"));
            return false;
        }
        return true;
    }

    private void assembly(Named<FileAlternatives.OfAssembly> decision) {
        Located<String> name = new Located<>(decision.name(), decision.place());
        if (!known(name, house.assemblies().collect(Named::name), "build-up")) {
            return;
        }
        FileAssembly described = house.assemblies()
                .detect(each -> each.name().equals(decision.name()))
                .value();
        for (FileAlternatives.BuildUpOption option : decision.value().options()) {
            option.assembly()
                    .filter(other -> other.value().equals(decision.name()))
                    .ifPresent(other -> faults.add(
                            other.place(),
                            "an option differs from what is described",
                            '"' + other.value() + '"',
                            "name another assembly"));
            option.thickness().ifPresent(thickness -> thickness(option, described, thickness));
        }
    }

    private void thickness(FileAlternatives.BuildUpOption option, FileAssembly described, double thickness) {
        ImmutableList<FileLayer> meant = meant(option, described);
        Position place = option.layer().map(Located::place).orElse(option.place());
        if (meant.size() != 1) {
            faults.add(
                    place,
                    option.layer().isPresent()
                            ? "the layer whose thickness is other is the only one of its material"
                            : "the layer whose thickness is other is the only one that controls heat",
                    meant.size() + " such layers",
                    "one of the materials "
                            + described.layers().collect(FileLayer::material).makeString(", "),
                    option.layer().isPresent()
                            ? "name another, or describe the whole assembly"
                            : "add layer: its material, or describe the whole assembly");
        } else if (meant.getOnly().taper().isPresent()) {
            faults.add(
                    place,
                    "the thickness of a layer cut to falls cannot be set alone",
                    option.title(),
                    "describe the whole assembly with its taper, and name it");
        } else {
            FileLayer layer = meant.getOnly();
            new MaterialChecks(house, faults).thickness(layer.material(), layer.role(), thickness, place);
        }
    }

    /** The layers whose thickness an option may mean. */
    static ImmutableList<FileLayer> meant(FileAlternatives.BuildUpOption option, FileAssembly described) {
        return described
                .layers()
                .select(layer -> option.layer().isPresent()
                        ? layer.material().equals(option.layer().get().value())
                        : layer.controls().contains(Control.HEAT));
    }

    private void openings(Named<FileAlternatives.OfOpenings> decision) {
        house.openings(decision.value())
                .forEach(opening -> decision.value().options().forEach(option -> option.fit(opening, faults)));
    }

    private void openingsOnce() {
        MutableSet<String> seen = Sets.mutable.empty();
        house.alternatives()
                .openings()
                .forEach(decision -> decision.value()
                        .openings()
                        .reject(seen::add)
                        .forEach(twice -> faults.add(
                                decision.place(),
                                "an opening is decided once",
                                '"' + twice + '"',
                                "take it from one of the decisions")));
    }

    private void currencies() {
        ImmutableList<Located<String>> all = house.alternatives()
                .costs()
                .flatCollect(
                        each -> Lists.immutable.withAll(each.currency().stream().toList()));
        String wanted = house.prices().prices(house.alternatives().currency()).currency();
        all.reject(each -> each.value().equals(wanted))
                .forEach(each ->
                        faults.add(each.place(), "all prices are in one currency", each.value(), wanted, "convert it"));
    }
}
