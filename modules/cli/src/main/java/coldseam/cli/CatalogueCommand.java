package coldseam.cli;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.Nearest;
import coldseam.junctions.Catalogue;
import coldseam.junctions.CatalogueFile;
import coldseam.junctions.Detail;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the kinds of junction and their options. */
@Command(
        name = "catalogue",
        description = "Lists the kinds of junction and the options for each, from worst to best.",
        mixinStandardHelpOptions = true)
final class CatalogueCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Option(names = "--kind", paramLabel = "KIND", description = "Only this kind, such as \"slab edge\".")
    Optional<String> kind;

    @Option(names = "--guide", description = "How to write a detail of your own.")
    boolean guide;

    CatalogueCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (guide) {
            terminal.out().println(CatalogueFile.guide().stripTrailing());
            return Exit.UNBROKEN.code();
        }
        Catalogue catalogue = CatalogueFile.builtIn();
        ImmutableList<JunctionKind> kinds = Lists.immutable.of(JunctionKind.values());
        ImmutableList<JunctionKind> asked =
                kind.map(word -> Lists.immutable.of(named(word, kinds))).orElse(kinds);
        for (JunctionKind each : asked) {
            terminal.out().println(each.label());
            ImmutableList<Detail> options = catalogue.options(each);
            options.forEach(detail -> Columns.fold(
                            detail.name(),
                            String.format(
                                    Locale.ROOT,
                                    "  %-7s %s: ",
                                    detail.rank().name().toLowerCase(Locale.ROOT),
                                    detail.id()),
                            "          ")
                    .forEach(terminal.out()::println));
            if (options.isEmpty()) {
                terminal.out().println("  none; draw one of your own");
            }
        }
        return Exit.UNBROKEN.code();
    }

    private static JunctionKind named(String word, ImmutableList<JunctionKind> kinds) {
        Optional<JunctionKind> found = kinds.detectOptional(each -> each.label().equals(word));
        return found.orElseThrow(() -> new RefusedException(Lists.immutable.of("--kind: got \"" + word + "\"; "
                + Nearest.to(word, kinds.collect(JunctionKind::label))
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("run \"coldseam catalogue\" for the kinds there are"))));
    }
}
