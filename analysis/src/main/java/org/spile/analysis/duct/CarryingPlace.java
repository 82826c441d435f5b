package org.spile.analysis.duct;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctPiece;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.duct.Sides;

/**
 * A place along a run where its section may carry the least: the ends of its pieces and where between them a piece is
 * narrowest. Vanes and screws aren't friction along a wall and are left out.
 *
 * @param section straight duct of that clear section, square to the path, carries as little
 * @param sides its sides with their readings
 * @param leg the leg it is in
 * @param atMm its station (mm)
 * @param trailer in whose frame the point is
 * @param at on the middle line
 */
record CarryingPlace(Section section, Sides sides, DuctLeg leg, double atMm, String trailer, Vector3D at) {
    private static final double SAME = 1e-9;

    /** In order along the run. */
    static List<CarryingPlace> along(DuctRun run) {
        List<CarryingPlace> places = new ArrayList<>();
        for (DuctPiece piece : run.pieces()) {
            double length = piece.lengthMm();
            double least = piece.clear().least().atMm();
            places.add(of(piece, 0));
            if (least > 0 && least < length) {
                places.add(of(piece, least));
            }
            places.add(of(piece, length));
        }
        return places;
    }

    private static CarryingPlace of(DuctPiece piece, double alongMm) {
        double wide = piece.clear().wideMm(alongMm);
        double high = piece.clear().highMm(alongMm);
        DuctLeg leg = piece.leg();
        boolean toEnd =
                Math.abs(wide - leg.end().wideMm()) + Math.abs(high - leg.end().highMm())
                        < Math.abs(wide - leg.start().wideMm())
                                + Math.abs(high - leg.start().highMm());
        Sides near = toEnd ? leg.endSides() : leg.startSides();
        Sides seen = new Sides(
                near.wide().times(wide / near.wide().valueMm()),
                near.high().times(high / near.high().valueMm()));
        return new CarryingPlace(
                section(toEnd ? leg.end() : leg.start(), wide, high, piece.clearAreaMm2(alongMm)),
                seen,
                leg,
                piece.stationMm(alongMm),
                piece.trailer(),
                piece.clear().middle(alongMm));
    }

    /** The form of the end it is nearest to, if that has the area there is; else the rectangle that has, as wide. */
    private static Section section(Section like, double wide, double high, double areaMm2) {
        Section same = like instanceof Section.Round && Math.abs(wide - high) <= SAME * wide
                ? like.wideMm() == wide ? like : new Section.Round(wide)
                : SectionShape.like(like).of(wide, high);
        if (Math.abs(same.areaMm2() - areaMm2) <= SAME * areaMm2) {
            return same;
        }
        return wide >= high
                ? new Section.Rectangular(wide, areaMm2 / wide)
                : new Section.Rectangular(areaMm2 / high, high);
    }

    /** The same section with every tolerance against it; nothing is less than a hundredth of what is nominally there. */
    Section worst() {
        double wide =
                section.wideMm() * share(sides.wide().worstLow(), sides.wide().valueMm());
        double high =
                section.highMm() * share(sides.high().worstLow(), sides.high().valueMm());
        return section instanceof Section.Round
                ? new Section.Round(Math.min(wide, high))
                : SectionShape.like(section).of(wide, high);
    }

    private static double share(double low, double value) {
        return Math.max(0.01, low / value);
    }
}
