package org.spile.geometry.house;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.kernel.measure.Stack;

/**
 * Where air or a service enters or leaves a thing, in the frame of its trailer.
 *
 * @param centre its middle
 * @param outward the way into the duct
 * @param side unit vector along {@code wide}
 * @param wide its size along {@code side}; absent for a bare point
 * @param high its size square to that
 * @param round whether it is round; {@code wide} is then its diameter
 */
record Opening(
        String path,
        String thing,
        String title,
        String trailer,
        Spot centre,
        Vector3D outward,
        Vector3D side,
        Optional<Stack> wide,
        Optional<Stack> high,
        boolean round) {

    /** The direction along {@code high}. */
    Vector3D up() {
        return outward.cross(side);
    }

    Opening moved(Rigid rigid) {
        return new Opening(
                path,
                thing,
                title,
                trailer,
                rigid.apply(centre),
                rigid.nominal().applyDirection(outward),
                rigid.nominal().applyDirection(side),
                wide,
                high,
                round);
    }

    Optional<Section> section() {
        if (wide.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        double w = wide.get().valueMm();
        double h = high.get().valueMm();
        if (!(w > 0) || !(h > 0)) {
            return Optional.empty();
        }
        return Optional.of(round ? new Section.Round(w) : new Section.Rectangular(w, h));
    }

    /** The same in the site frame. */
    Mouth mouth(Rigid toSite) {
        Opening site = moved(toSite);
        return new Mouth(path, thing, title, trailer, site.centre.at(), site.outward, site.side, section());
    }
}
