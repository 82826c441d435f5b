package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.spile.geometry.house.spot.Shape;

/** In which cavities and rooms things lie: in what they are placed in, and where their middle is. */
final class Whereabouts {
    private final Spaces spaces;

    Whereabouts(Spaces spaces) {
        this.spaces = spaces;
    }

    List<String> spaces(Stood stood) {
        return spaces(stood.in(), stood.shape());
    }

    List<String> spaces(Enclosure in, Shape shape) {
        Set<String> ids = new LinkedHashSet<>(in.spaces());
        ids.addAll(spaces.holding(in.trailer(), shape.body().bounds().middle()));
        return List.copyOf(ids);
    }

    /** The bodies of a thing as pieces. */
    List<Piece> pieces(Stood stood, PartKind kind) {
        List<Piece> pieces = new ArrayList<>();
        List<Shape> shapes = stood.shapes();
        List<String> in = spaces(stood);
        String path = stood.placed().path();
        for (int i = 0; i < shapes.size(); i++) {
            pieces.add(Piece.of(
                    i == 0 ? path : path + ".bodies[" + i + "]",
                    path,
                    kind,
                    i == 0 ? stood.placed().title() : stood.placed().title() + ", body " + (i + 1),
                    in,
                    stood.in().trailer(),
                    shapes.get(i)));
        }
        return pieces;
    }
}
