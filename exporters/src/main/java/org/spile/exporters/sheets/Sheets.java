package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.drawing.layout.SheetLayout;

/** All sheets of a house; the order of the composers is the order of the sheets. */
public final class Sheets {
    private static final List<Composer> COMPOSERS =
            List.of(new PlanSheets(), new ServicePlans(), new SectionSheets(), new RunSheets());

    private Sheets() {}

    /** What came of drawing a house: the set, and what could not be laid out and why. */
    public record Drawn(SheetSet set, List<String> refused) {
        /** Copies the list. */
        public Drawn {
            refused = List.copyOf(refused);
        }
    }

    /** Draws every sheet of a house. */
    public static Drawn of(Subject subject) {
        List<Sheet> sheets = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (Composer composer : COMPOSERS) {
            for (SheetLayout layout : composer.compose(subject)) {
                Laid laid = layout.lay();
                if (laid instanceof Laid.Fits fits) {
                    sheets.add(fits.sheet());
                } else if (laid instanceof Laid.TooLarge large) {
                    refused.add(large.because() + ". What would help: " + String.join(", ", large.alternatives()));
                }
            }
        }
        return new Drawn(SheetSet.numbered(subject.name(), sheets), refused);
    }
}
