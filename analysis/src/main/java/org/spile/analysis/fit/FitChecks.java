package org.spile.analysis.fit;

import java.util.List;

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
}
