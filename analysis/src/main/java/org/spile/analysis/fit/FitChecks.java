package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import org.spile.geometry.house.House;

/** Every question of fit, in the order in which they are asked. */
final class FitChecks {
    private static final List<FitCheck> ALL = List.of(
            new MakersVoid(),
            new MakersClearance(),
            new ServiceRoom(),
            new HandRoom(),
            new GeneralClearance(),
            new Inside(),
            new CavityDepth(),
            new Headroom(),
            new DoorHead());

    private FitChecks() {}

    static List<FitCheck> all() {
        return ALL;
    }

    /** All answers to a house, stance by stance. */
    static List<Answer> answers(House house) {
        List<Answer> answers = new ArrayList<>();
        for (String stance : house.stances()) {
            Site site = Site.of(house, stance);
            for (FitCheck check : ALL) {
                answers.addAll(check.answers(site));
            }
        }
        return answers;
    }
}
