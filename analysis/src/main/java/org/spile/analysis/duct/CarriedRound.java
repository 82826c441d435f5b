package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.House;
import org.spile.geometry.house.duct.DuctRun;

/** The round duct that a run is worth where it carries the least: equal loss per metre at the run's own flow. */
public final class CarriedRound {
    private CarriedRound() {}

    /**
     * Its diameter with its band (mm).
     *
     * @param house the house that has the run
     * @param run one that says its flow; without one nothing is known
     */
    public static Reckoning<Spread> of(House house, DuctRun run) {
        if (run.flowM3s().isEmpty()) {
            return Reckoning.none("What a run is worth depends on its flow; " + run.path() + ".flow would say it.");
        }
        return RunDuct.of(house, run)
                .then(duct -> EqualFriction.roundMm(duct.narrow(), run.flowM3s().get()));
    }
}
