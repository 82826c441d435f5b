package org.spile.geometry.house.told;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A whole house file as told; maps keep the order of the file.
 *
 * @param title what to call it; empty if unsaid
 * @param project for the title block
 * @param options named lists of edits, still as text
 */
public record ToldHouse(
        String title,
        ToldProject project,
        Map<String, ToldTrailer> trailers,
        Map<String, ToldRoom> rooms,
        Map<String, ToldCavity> cavities,
        Map<String, ToldFixture> fixtures,
        Map<String, ToldMover> movers,
        Map<String, ToldUnit> units,
        Map<String, ToldTerminal> terminals,
        Map<String, ToldRun> runs,
        Map<String, ToldLine> lines,
        Map<String, ToldMass> masses,
        Map<String, ToldMaterial> materials,
        Optional<ToldClimate> climate,
        ToldLimits limits,
        Map<String, ToldStance> stances,
        Map<String, ToldSituation> situations,
        Map<String, List<String>> options) {}
