package coldseam.envelope;

import coldseam.files.Default;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.OneOf;
import coldseam.files.ResourceFolder;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A moment in the order of building at which work waits until somebody has looked at what is about to be covered.
 *
 * <p>All stops stand in {@code kinds/hold-points.yaml}. A kind names those its bridges belong to; a photograph of a detail names
 * its own.
 */
public final class Stop implements OneOf {

    /** As they are written. */
    @Noun("hold points")
    record FileStops(ImmutableList<Named<FileStop>> holdPoints) {}

    /**
     * One stop as it is written.
     *
     * @param before what would cover it
     * @param always whether it is there in a house without any bridge that belongs to it
     * @param oldOnly whether only an old house has it, of which something stays
     * @param lookAt what to look at
     * @param inTwoLayers what to look at besides where its boards lie in two layers
     */
    @Noun("a hold point")
    record FileStop(
            String before,
            @Default("false") boolean always,
            @Default("false") boolean oldOnly,
            ImmutableList<String> lookAt,
            Optional<FileTwoLayers> inTwoLayers) {}

    /**
     * @param faces which way the surface looks whose boards are meant
     * @param lookAt what to look at
     */
    @Noun("boards in two layers")
    record FileTwoLayers(BridgeKind.Facing faces, ImmutableList<String> lookAt) {}

    private static final ImmutableList<Stop> ALL = new ResourceFolder("/kinds/")
            .read("hold-points.yaml", FileStops.class, Maps.immutable.empty())
            .holdPoints()
            .collect(each -> new Stop(each.name(), each.value()));

    private final String label;
    private final FileStop file;

    private Stop(String label, FileStop file) {
        this.label = label;
        this.file = file;
    }

    /** Every stop, in the order of building. */
    public static ImmutableList<Stop> all() {
        return ALL;
    }

    @Override
    public String label() {
        return label;
    }

    /** What would cover what is to be seen. */
    public String before() {
        return file.before();
    }

    /** Whether it is there in a house without any bridge that belongs to it. */
    public boolean always() {
        return file.always();
    }

    /** Whether only an old house has it, of which something stays. */
    public boolean oldOnly() {
        return file.oldOnly();
    }

    /** What to look at in any house. */
    public ImmutableList<String> lookAt() {
        return file.lookAt();
    }

    /** What to look at besides where boards lie in two layers on a surface that looks this way; nothing on any other. */
    public ImmutableList<String> lookAtInTwoLayers(BridgeKind.Facing faces) {
        return file.inTwoLayers()
                .filter(each -> each.faces() == faces)
                .map(FileTwoLayers::lookAt)
                .orElse(Lists.immutable.empty());
    }

    @Override
    public String toString() {
        return label;
    }
}
