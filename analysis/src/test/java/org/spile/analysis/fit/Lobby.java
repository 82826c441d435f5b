package org.spile.analysis.fit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.spile.geometry.house.House;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;

/**
 * The lobby's ceiling cavity of the field station: a cooler hung from the roof over battens and plywood.
 *
 * <pre>
 *   roof 2244 ± 3 ---------------------
 *     pir 25 ± 1    ////////////////////
 *     48 ± 2 to the cooler's top, 200 ± 1 high
 *     batten 19 ± 1, ply 6 ± 0.5
 *   ceiling 1962 ± 3 (less its drop) ---
 * </pre>
 */
final class Lobby {
    static final String BOTTOM = "fit.maker/units.cooler.clearance.bottom";
    static final String TOP = "fit.maker/units.cooler.clearance.top";
    static final String VOID = "fit.void/units.cooler/cavities.lobby-top";
    static final String HEADROOM = "fit.headroom/rooms.lobby";

    private static final double BEHIND_MM = 500;

    private Lobby() {}

    static House house() {
        return house(1930);
    }

    static House house(double headroomMm) {
        return HandHouse.of(told(headroomMm), Lobby::lay);
    }

    static org.spile.geometry.house.told.ToldHouse told(double headroomMm) {
        Map<String, Double> asked = new LinkedHashMap<>();
        asked.put("top", 20.0);
        asked.put("bottom", 15.0);
        return Tell.house().unit("cooler", 230, asked).room("lobby", headroomMm).done();
    }

    static void lay(HandScene scene, Tape tape) {
        Stack roof = tape.read("trailers.bunk.roof.profile[2].up", 2244, 3);
        Stack lining = roof.minus(tape.read("cavities.lobby-top.top.linings[1].pir", 25, 1));
        Stack ceiling = tape.read("cavities.lobby-top.ceiling.at", 1962, 3)
                .minus(tape.exact("cavities.lobby-top.ceiling.drop", 0));
        Stack battens = ceiling.plus(tape.read("cavities.lobby-top.ceiling.linings[2].ply", 6, 0.5))
                .plus(tape.read("cavities.lobby-top.ceiling.linings[1].batten", 19, 1));
        Stack top = roof.minus(tape.read("units.cooler.at.top", 48, 2));
        Stack bottom = top.minus(tape.read("units.cooler.high", 200, 1));
        Outline plan = Outline.rectangle(0, 0, 1800, 1350);
        scene.put(
                        PartKind.LINING,
                        "cavities.lobby-top.ceiling",
                        "lobby-top lobby",
                        Box.upright(0, 1800, 0, 1350, ceiling, battens))
                .put(
                        PartKind.LINING,
                        "cavities.lobby-top.top",
                        "lobby-top",
                        Box.upright(0, 1800, 0, 1350, lining, roof.plus(BEHIND_MM)))
                .put(PartKind.UNIT, "units.cooler", "lobby-top", Box.upright(520, 970, 440, 1140, bottom, top))
                .cavity(new FlatCavity("lobby-top", plan, battens, lining, true, "lobby"))
                .room(new FlatRoom("lobby", plan, Stack.constant(0), ceiling));
    }
}
