package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.geometry.house.Scene;

/** A sheet for each place where a section is cut: the whole section, and each flagged gap in it close up. */
final class SectionSheets implements Composer {
    @Override
    public List<SheetLayout> compose(Subject subject) {
        Scene scene = subject.home();
        List<SheetLayout> sheets = new ArrayList<>();
        for (SectionPlaces.Place place : SectionPlaces.of(scene, subject.flagged())) {
            sheets.add(sheet(subject, scene, place, SectionLetters.letter(sheets.size())));
        }
        return sheets;
    }

    private static SheetLayout sheet(Subject subject, Scene scene, SectionPlaces.Place place, String letter) {
        var view = new SectionView(scene, place.plane(), letter);
        String name = "section-" + letter.toLowerCase(Locale.ROOT);
        SheetLayout layout = SheetLayout.named(
                        name,
                        subject.block(
                                "Section " + letter + "-" + letter
                                        + Subjects.of(place.plane().trailer()),
                                "section"))
                .view(view.whole(subject, place.findings()));
        view.closeUps(subject, place.findings()).forEach(layout::view);
        return layout.panel(subject.findings(place.findings())).panel(Subject.cautions());
    }
}
