package coldseam.envelope.file.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.Retrofit;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Nearest;
import coldseam.files.Noun;
import coldseam.files.Size;
import java.util.Optional;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.MutableSet;

@Noun("what stays of an old house")
@Doc("An old house: the structure of every surface stays, but for those that are named here.")
record FileRetrofit(
        @Doc("Names of the surfaces whose structure is built new, or of roofs or storeys that are new as a whole.")
        @Default("")
        ImmutableList<Located<String>> builtNew,

        @Doc(
                "Whether the studs of framed walls that stay run past the floors, so that their bays are open from storey to storey.")
        Optional<Located<Boolean>> balloonFrame,

        @Doc("Parts that are taken down, such as parapet; details say which they need down.") @Default("")
        ImmutableList<Located<String>> takenDown,

        @Doc("What is there before anything is built, so that each seam's sheet shows it beside what is planned.")
        Optional<FileFound> found,

        @Size(max = 60)
        @Doc(
                "The order of building, for \"coldseam compare\" of this house with another: names of assemblies, windows and doors, points, details.")
        @Default("")
        ImmutableList<Located<String>> order) {

    /** Adds every name in the order that is no measure, or that is there twice. */
    void check(ImmutableList<String> assemblies, ImmutableList<String> openings, Faults faults) {
        found.ifPresent(each -> each.check(assemblies, openings, faults));
        ImmutableList<String> measures = assemblies.newWithAll(Retrofit.OTHER_MEASURES);
        MutableSet<String> seen = Sets.mutable.empty();
        for (Located<String> each : order) {
            if (!measures.contains(each.value())) {
                faults.add(
                        each.place(),
                        "the order of building is of assemblies of this file, by their names, and of "
                                + Retrofit.OTHER_MEASURES.makeString(", "),
                        '"' + each.value() + '"',
                        "one of " + measures.makeString(", "),
                        Nearest.meant(each.value(), measures).orElse("correct the name"));
            } else if (!seen.add(each.value())) {
                faults.add(
                        each.place(),
                        "each measure is built once",
                        '"' + each.value() + "\" twice",
                        "remove one of them");
            }
        }
    }

    Retrofit retrofit(ImmutableMap<String, Assembly> assemblies, ImmutableList<Named<FileOpening>> openings) {
        return new Retrofit(
                builtNew.collect(Located::value).toImmutableSet(),
                balloonFrame.filter(Located::value).isPresent(),
                takenDown.collect(Located::value).toImmutableSet(),
                found.map(each -> each.found(assemblies, openings)),
                order.collect(Located::value));
    }
}
