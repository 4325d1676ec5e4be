package coldseam.envelope.file.house;

import coldseam.envelope.Duty;
import coldseam.files.Doc;
import coldseam.files.Noun;
import java.util.Optional;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Maps;

/** What a material bears as insulation, each with its source. */
@Noun("what a material bears")
@Doc("What a material bears as insulation, each with the source that says so.")
public record FileBears(
        @Doc("Source that says that it may lie in the ground.")
        Optional<String> ground,

        @Doc("Source that says that it may stand where rain splashes up, to 300 mm above the ground.")
        Optional<String> splash,

        @Doc("Source that says that it carries a slab, a screed or paving for good.")
        Optional<String> load,

        @Doc("Source that says that it may lie behind a cladding, outside the layer that keeps out water.")
        Optional<String> rain) {

    public FileBears {
        ground.ifPresent(text -> SourceText.require("ground", text));
        splash.ifPresent(text -> SourceText.require("splash", text));
        load.ifPresent(text -> SourceText.require("load", text));
        rain.ifPresent(text -> SourceText.require("rain", text));
    }

    /** By duty; what is not said is not there. */
    public ImmutableMap<Duty, String> sources() {
        MutableMap<Duty, String> sources = Maps.mutable.empty();
        ground.ifPresent(source -> sources.put(Duty.GROUND, source));
        splash.ifPresent(source -> sources.put(Duty.SPLASH, source));
        load.ifPresent(source -> sources.put(Duty.LOAD, source));
        rain.ifPresent(source -> sources.put(Duty.RAIN, source));
        return sources.toImmutable();
    }
}
