package org.spile.geometry.house.duct;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets the screws of each joint: where pieces meet, at both ends of the run, and in the plane of a mitred bend, whose halves
 * are joined there.
 */
final class Joints {
    private final Screws screws;

    Joints(Screws screws) {
        this.screws = screws;
    }

    List<DuctPiece> screwed(List<DuctPiece> pieces) {
        List<DuctPiece> screwed = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            DuctPiece piece = pieces.get(i);
            List<Intrusion> all = new ArrayList<>();
            all.add(tips(piece, 0));
            if (piece instanceof MitredBend bend) {
                all.add(inMitre(bend));
            } else {
                all.addAll(piece.intrusions());
            }
            if (i + 1 == pieces.size()) {
                all.add(tips(piece, piece.lengthMm()));
            }
            screwed.add(piece.with(all));
        }
        return screwed;
    }

    private Intrusion tips(DuctPiece piece, double atMm) {
        double perimeter = piece.wettedPerimeterMm(atMm);
        return new Intrusion(atMm, screws.coveredMm2(perimeter), screws.count(perimeter) + " screw tips");
    }

    private Intrusion inMitre(MitredBend bend) {
        double corner = bend.cornerMm();
        Intrusion tips = tips(bend, corner);
        double covered = tips.areaMm2();
        String words = tips.words();
        for (Intrusion vanes : bend.intrusions()) {
            covered += vanes.areaMm2();
            words = vanes.words() + " and " + words;
        }
        return new Intrusion(corner, covered, words);
    }
}
