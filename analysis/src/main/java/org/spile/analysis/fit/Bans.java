package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.House;

/** Everything that keeps a unit away from anything. */
public final class Bans {
    private Bans() {}

    /**
     * All bans on a unit by stance, in a fixed order. What a stance bans as the first one does isn't told again.
     *
     * @param house worked out
     * @param unit path of the unit
     */
    public static Map<String, List<Ban>> of(House house, String unit) {
        Map<String, List<Ban>> bans = new LinkedHashMap<>();
        Site first = null;
        for (String stance : house.stances()) {
            Site site = Site.of(house, stance);
            if (first == null) {
                first = site;
            } else {
                site = site.narrowed(Changes.between(first.scene(), site.scene(), false));
            }
            List<Ban> here = new ArrayList<>();
            for (FitCheck check : FitChecks.all()) {
                here.addAll(check.bans(site, unit));
            }
            bans.put(stance, List.copyOf(here));
        }
        return bans;
    }
}
