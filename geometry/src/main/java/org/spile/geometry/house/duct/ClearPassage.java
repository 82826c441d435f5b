package org.spile.geometry.house.duct;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What is clear inside a piece of duct, at each place along its path; layers inside are already outside of it.
 *
 * <p>Areas and perimeters are square to the path. A sheared piece of axial length {@code L} whose ends lie {@code e} out of
 * line passes its end section times {@code L / sqrt(L2 + e2)}; the plane of a mitre is the root of two larger than the duct,
 * and is crossed aslant by as much. Places are mm along the piece's own path, clamped to its ends; points are in the frame of
 * the leg's trailer.
 */
public sealed interface ClearPassage permits SquareStretch, FoldedStretch, ArcPassage, MitrePassage {
    /** Length along its path (mm). */
    double lengthMm();

    /** Clear area square to the path (mm2). */
    double areaMm2(double atMm);

    /** Wetted perimeter square to the path (mm). */
    double perimeterMm(double atMm);

    /** Clear size along the level side; across, on an upright leg (mm). */
    double wideMm(double atMm);

    /** Clear size along the upright side; fore and aft, on an upright leg (mm). */
    double highMm(double atMm);

    /** The middle of the section. */
    Vector3D middle(double atMm);

    /**
     * The section as a ring of points: corners of flats; on curves, points on the curve. Where the ends are cut aslant it
     * lies in the plane that turns with the path.
     */
    List<Vector3D> outline(double atMm);

    /** Where it is least, and how much is clear there; the first of equals. */
    Least least();

    /**
     * The least clear area along a piece.
     *
     * @param atMm along the piece's path
     * @param areaMm2 square to the path
     */
    record Least(double atMm, double areaMm2) {}
}
