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
        otherBases("", body.otherBases());
        stack("", body.storeys(), body.base(), body.roof());
        body.wings().forEach(each -> {
            FileBody.FileWing wing = each.value();
            otherBases(each.name(), wing.otherBases());
            stack(each.name(), wing.storeys(), wing.base(), wing.roof());
            put(ShellFault.Part.BODY, each.name(), wing.place());
        });
    }

    private void otherBases(String stack, ImmutableList<FileBase> bases) {
        bases.forEachWithIndex(
                (base, i) -> put(ShellFault.Part.BASE, ShellFault.otherBase(stack, i + 1), base.place()));
    }

    private void stack(String name, ImmutableList<FileStorey> storeys, FileBase base, FileRoof roof) {
        put(ShellFault.Part.BASE, name, base.place());
        put(ShellFault.Part.ROOF, name, roof.place());
        roof.dormers()
                .forEach(each -> each.value()
                        .names(each.name())
                        .forEach(dormer ->
                                put(ShellFault.Part.DORMER, dormer, each.value().place())));
        for (FileStorey storey : storeys) {
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
