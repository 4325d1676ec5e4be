package coldseam.envelope.file.house;

import coldseam.envelope.Duty;
import coldseam.files.Doc;
import coldseam.files.Noun;
import java.util.Optional;
import org.eclipse.collections.api.map.ImmutableMap;
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
        SourceText.require("ground", ground);
        SourceText.require("splash", splash);
        SourceText.require("load", load);
        SourceText.require("rain", rain);
    }

    /** By duty; what is not said is not there. */
    public ImmutableMap<Duty, String> sources() {
        return SourceText.given(
                Maps.immutable.of(Duty.GROUND, ground, Duty.SPLASH, splash, Duty.LOAD, load, Duty.RAIN, rain));
    }
}
