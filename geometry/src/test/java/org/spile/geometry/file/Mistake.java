package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;

/**
 * A mistake that people make, in a house that is otherwise sound.
 *
 * @param house which of {@link Houses}
 * @param right what stands there
 * @param wrong what is typed in its place
 * @param shown the mistake as the reference page shows it
 * @param doubt whether it is a question
 * @param told what must be said of it, whole
 */
record Mistake(String house, String right, String wrong, String shown, boolean doubt, String told) {

    String text() {
        String text = Houses.text(house);
        if (!text.contains(right)) {
            throw new IllegalStateException("\"" + right + "\" doesn't stand in " + house);
        }
        return text.replace(right, wrong);
    }

    static List<Mistake> all() {
        var all = new ArrayList<Mistake>();
        all.add(error(
                "loft",
                "high: 262  ",
                "depth: 262  ",
                "depth: 262",
                "house.yaml:5:5: cavities.loft has no \"depth\". Its upright size is \"high\"."));
        all.add(
                doubt(
                        "loft",
                        "high: 262  ",
                        "high: 26.2  ",
                        "high: 26.2",
                        "house.yaml:5:11: cavities.loft.high: 26.2 mm is unlikely, 262 mm is usual. Write 26.2 cm; or 26.2 mm if you mean it."));
        all.add(
                error(
                        "loft",
                        "at: {top: 46}",
                        "at: {left: 0,5 m, top: 46}",
                        "{left: 0,5 m}",
                        "house.yaml:8:56: \"0,5 m\": between { } a comma starts the next entry; this reads as left: 0 and a key \"5 m\". Write left: 0.5 m."));
        all.add(
                doubt(
                        "site-cabin",
                        "title: \"Site cabin #3, desk end\"",
                        "title: Site cabin #3",
                        "title: Site cabin #3",
                        "house.yaml:1:19: \" #\" starts a comment, so the title reads \"Site cabin\". To keep the rest, quote it: \"Site cabin #3\"."));
        all.add(
                error(
                        "saltmarsh",
                        "front: 180 out",
                        "front: -180",
                        "front: -180",
                        "house.yaml:106:35: units.outdoor.at.front: \"-180\": a distance has no sign. Inwards from the front of bunk: 180. Beyond it: 180 out."));
        all.add(
                error(
                        "saltmarsh",
                        "down: 52, wide: 300, high: 70}",
                        "down: 52, size: 300x70}",
                        "size: 300x70",
                        "house.yaml:136:30: runs.lab-supply.path[3] has no \"size\". Write wide: 300, high: 70 (wide is the level side)."));
        all.add(error(
                "saltmarsh",
                "in: lobby-top\n    at: {rear: 520",
                "in: loby-top\n    at: {rear: 520",
                "in: loby-top",
                "house.yaml:74:9: units.cooler.in: there is no \"loby-top\". Nearest: \"lobby-top\" (a cavity)."));
        all.add(
                doubt(
                        "saltmarsh",
                        "      - {aft: 260}\n",
                        "      - {aft: 420, left: 600}\n",
                        "{aft: 420, left: 600}",
                        "house.yaml:135:9: runs.lab-supply.path[2]: one slanted leg of 732 mm, 35 deg off the last one? For two legs, write two stations; for one, add slant: yes."));
        all.add(error(
                "saltmarsh",
                "bench: 40 L/s",
                "bench: 40",
                "bench: 40",
                "house.yaml:175:54: limits.flow.bench: \"40\" has no unit. A flow is 40 L/s, 40 m3/h or 40 cfm."));
        all.add(
                doubt(
                        "saltmarsh",
                        "      - {forward: 20} ",
                        "      - {wide: 204, high: 60}\n      - {forward: 20} ",
                        "wide: 204, high: 60",
                        "house.yaml:150:16: runs.toilet-flat.path[1]: 204 x 60 is usually printed on the outside. With layers, sizes are inside. Write sizes: outside (clear 202 x 58), or sizes: inside."));
        all.add(
                doubt(
                        "saltmarsh",
                        "    cooling: 2.6 kW at 35 degC",
                        "    cooling: 2.6 kW at 35 degC\n    layers: [{foam: 9}]",
                        "layers: [{foam: 9}]",
                        "house.yaml:95:13: units.cooler.layers: with layers, sizes are inside; but its \"long\" is the maker's, who measures outside. Write sizes: outside, or sizes: inside."));
        all.add(
                error(
                        "loft",
                        "units:",
                        "fixtures: {on: {long: 40, wide: 40, high: 40}}\nunits:",
                        "on: {...}",
                        "house.yaml:7:12: fixtures: \"on\" can't be a name: other YAML readers turn on, off, yes and no into true and false. Call it something else."));
        all.add(
                error(
                        "saltmarsh",
                        "at: {rear: 520, left: 210, top",
                        "at: {rear: 520, left: 210, right: 430, top",
                        "left: 210, right: 430",
                        "house.yaml:75:9: units.cooler.at: left 210 + wide 700 + right 430 = 1340; lobby-top is 1350 from left to right, 10 more. Leave one out."));
        all.add(
                error(
                        "saltmarsh",
                        "{left: 455, through",
                        "{left: 450, through",
                        "left: 450",
                        "house.yaml:134:16: runs.lab-supply ends 5 mm to the right of bench-grille's middle. Write left: 455 or left: rest here, or set terminals.bench-grille.at.right=520."));
        return all;
    }

    private static Mistake error(String house, String right, String wrong, String shown, String told) {
        return new Mistake(house, right, wrong, shown, false, told);
    }

    private static Mistake doubt(String house, String right, String wrong, String shown, String told) {
        return new Mistake(house, right, wrong, shown, true, told);
    }
}
