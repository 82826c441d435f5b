package org.spile.geometry.file;

import java.nio.file.Path;
import java.util.Optional;
import org.spile.geometry.house.told.ToldOutline;

/**
 * The drawings in a house file's folder.
 *
 * @param folder the folder
 */
record FolderDrawings(Path folder) implements Drawings {

    /** The drawings beside a house file. */
    static Drawings beside(Path houseFile) {
        Path folder = houseFile.toAbsolutePath().getParent();
        return folder == null ? Drawings.none() : new FolderDrawings(folder);
    }

    @Override
    public Optional<ToldOutline> outline(DrawnShape.Drawn drawn, Spot spot, Scribe scribe) {
        OutlineSource.Result result = new OutlineSource(folder).read(drawn);
        if (result instanceof OutlineSource.Refused refused) {
            if (refused.doubt()) {
                scribe.doubt(spot, refused.says(), refused.advice());
            } else {
                scribe.wrong(spot, refused.says(), refused.advice());
            }
            return Optional.empty();
        }
        var corners = ((OutlineSource.Taken) result).cornersMm();
        return OutlineRules.sound(spot, corners, scribe)
                ? Optional.of(new ToldOutline(spot.path(), corners, drawn.from()))
                : Optional.empty();
    }
}
