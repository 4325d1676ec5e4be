package coldseam.envelope.file.house;

import coldseam.envelope.shell.fault.ShellFault;
import coldseam.files.Position;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

/** Where each part of the shape stands in the file. */
final class ShapePlaces {

    private final MutableMap<LoadedHouse.Part, Position> places = Maps.mutable.empty();

    private ShapePlaces() {}

    static ImmutableMap<LoadedHouse.Part, Position> of(FileHouse file) {
        ShapePlaces all = new ShapePlaces();
        all.put(ShellFault.Part.BODY, "", file.body().place());
        if (file.body() instanceof FileBody.FileStoreys storeys) {
            all.storeys(storeys);
        } else {
            FileBody.FileSurfaces body = (FileBody.FileSurfaces) file.body();
            body.surfaces().forEach(each -> all.put(ShellFault.Part.SURFACE, each.name(), each.place()));
            body.levels().forEach(each -> all.put(ShellFault.Part.STOREY, each.name(), each.place()));
        }
        file.openings()
                .forEach(row -> row.value()
                        .openings(row.name())
                        .forEach(each -> all.put(
                                ShellFault.Part.OPENING,
                                each.name(),
                                row.value().surface().place())));
        file.seams()
                .forEach(each -> all.put(
                        ShellFault.Part.SEAM,
                        each.name(),
                        each.value().surface().place()));
        return all.places.toImmutable();
    }

    /** A wall's place is also that of the surface it becomes; those with other names are the storey's. */
    private void storeys(FileBody.FileStoreys body) {
        stack("", body);
        body.wings().forEach(each -> {
            stack(each.name(), each.value());
            put(ShellFault.Part.BODY, each.name(), each.value().place());
        });
    }

    private void stack(String name, FileBody.FileStack stack) {
        stack.otherBases()
                .forEachWithIndex(
                        (base, i) -> put(ShellFault.Part.BASE, ShellFault.otherBase(name, i + 1), base.place()));
        put(ShellFault.Part.BASE, name, stack.base().place());
        put(ShellFault.Part.ROOF, name, stack.roof().place());
        stack.roof()
                .dormers()
                .forEach(each -> each.value()
                        .names(each.name())
                        .forEach(dormer ->
                                put(ShellFault.Part.DORMER, dormer, each.value().place())));
        for (FileStorey storey : stack.storeys()) {
            put(ShellFault.Part.STOREY, storey.name(), storey.place());
            ImmutableList<String> names = BodyBuilder.names(storey);
            storey.walls().bySide(storey.outlines()).forEachWithIndex((wall, i) -> {
                put(ShellFault.Part.WALL, names.get(i), wall.place());
                put(ShellFault.Part.SURFACE, names.get(i), wall.place());
            });
        }
    }

    private void put(ShellFault.Part part, String name, Position place) {
        places.put(new LoadedHouse.Part(part, name), place);
    }
}
