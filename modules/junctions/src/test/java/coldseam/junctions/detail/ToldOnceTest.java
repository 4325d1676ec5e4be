package coldseam.junctions.detail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.files.Faults;
import coldseam.files.ResourceFolder;
import coldseam.files.SourceNode;
import coldseam.junctions.catalogue.CatalogueFile;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.junit.jupiter.api.Test;

/** What several details caution of, or draw of a material that no house has, stands in one file. */
class ToldOnceTest {

    private static final ImmutableList<Detail> ALL =
            CatalogueFile.builtIn().details().distinctBy(Detail::id);

    private static ImmutableList<String> files(String... folders) {
        return Lists.immutable
                .with(folders)
                .flatCollect(
                        folder -> new ResourceFolder(folder).read((tree, content, faults) -> Optional.of(content)));
    }

    /** What two details caution of is told once, and nothing else is. */
    @Test
    void cautionsOfSeveralDetailsHaveNames() {
        MutableSet<String> several = ALL.flatCollect(Detail::cautions)
                .toBag()
                .selectByOccurrences(times -> times > 1)
                .toSet();
        assertEquals(
                Sets.mutable.empty(),
                several.symmetricDifference(Cautions.BY_NAME.toSet()),
                "give what two details or more caution of a name in cautions.yaml, and nothing else");
    }

    /** A copy in full would stay as it is where the text is mended. */
    @Test
    void cautionsWithANameAreGivenByIt() {
        ImmutableList<String> files = files("/details/", "/points/", "/corners/");
        assertEquals(
                Lists.immutable.empty(),
                Cautions.BY_NAME
                        .keyValuesView()
                        .select(each -> files.anySatisfy(file -> file.contains(each.getTwo())))
                        .collect(each -> "write \"" + each.getOne() + "\" in place of: " + each.getTwo())
                        .toSortedList());
    }

    /** A name that stands for none would be printed as it is written. */
    @Test
    void everyCautionIsASentence() {
        assertEquals(
                Lists.immutable.empty(),
                ALL.flatCollect(Detail::cautions)
                        .reject(each -> each.endsWith("."))
                        .distinct());
    }

    /** A detail's own material goes before one of the same name that all may draw. */
    @Test
    void noTwoMaterialsHaveOneName() {
        assertEquals(
                Sets.mutable.empty(),
                Lists.immutable
                        .of("/details/", "/points/", "/corners/")
                        .flatCollect(folder -> new ResourceFolder(folder).read(ToldOnceTest::own))
                        .flatCollect(names -> names)
                        .newWithAll(SharedMaterials.ALL.keysView())
                        .toBag()
                        .selectByOccurrences(times -> times > 1)
                        .toSet(),
                "give what two details or more draw a name in drawn-materials.yaml");
    }

    /** Names of the materials of a detail's own. */
    private static Optional<ImmutableList<String>> own(SourceNode tree, String content, Faults faults) {
        return Optional.of(((SourceNode.Mapping) tree)
                .entry("materials")
                .map(each -> ((SourceNode.Mapping) each.value()).entries().collect(SourceNode.Entry::key))
                .orElse(Lists.immutable.empty()));
    }

    @Test
    void whatIsSharedIsDrawnBySeveral() {
        ImmutableList<String> files = files("/details/", "/points/", "/corners/", "/parts/");
        assertEquals(
                Lists.immutable.empty(),
                SharedMaterials.ALL.keysView().toSortedList().select(name -> {
                    Pattern drawn = Pattern.compile("material: " + Pattern.quote(name) + "[,}\\n]");
                    return files.count(file -> drawn.matcher(file).find()) < 2;
                }));
    }
}
