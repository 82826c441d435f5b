package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can't stand together, thing by thing; the words are our own. */
class ThingRulesTest {
    private static final String BASE = """
            trailers:
              bunk: {long: 6000, wide: 2440}
            rooms:
              lobby: {long: 2000, wide: 1500}
            cavities:
              loft: {over: lobby, ceiling: 1962}
            units:
              fan: {in: loft, round: 118, long: 38, spigots: {out: {face: front, round: 100}, in: {face: rear, round: 100}}}
            terminals:
              grille: {kind: grille, in: lobby, face: left, round: 100}
            """;

    private static List<String> wrong(String section, String thing) {
        String text = BASE.contains(section + ":\n")
                ? BASE.replace(section + ":\n", section + ":\n  it: " + thing + "\n")
                : BASE + section + ":\n  it: " + thing + "\n";
        return Houses.wrong(text).stream()
                .map(line -> line.replaceFirst("^house.yaml:\\d+:\\d+: ", ""))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cavities|{over: lobby, ceiling: 1962, floor: 30}|cavities.it has a ceiling and a floor. Keep the one that is under it.",
                "cavities|{over: loft}|cavities.it.over: \"loft\" is a cavity. Here stands the name of a room.",
                "cavities|{over: lobby, top: {drop: 3}}|cavities.it.top has no \"drop\". Only a ceiling or a floor can be lowered.",
                "cavities|{over: lobby, ceiling: {at: 1962, profile: [{left: 0, up: 1}, {right: 0, up: 2}]}}"
                        + "|cavities.it.ceiling has \"at\" and \"profile\". A level surface has at, a sloping one profile.",
                "cavities|{over: lobby, top: {profile: [{left: 0, up: 1}]}}"
                        + "|cavities.it.top.profile: the list has 1 of at least 2. Each is {side: distance, up: height}.",
                "cavities|{over: lobby, top: {linings: [{plywood: 6}]}}"
                        + "|cavities.it.top.linings[1]: there is no material \"plywood\". Name it under materials.",
                "cavities|{over: lobby, top: {linings: [{pri: 6}]}}"
                        + "|cavities.it.top.linings[1]: there is no material \"pri\". Nearest: \"pir\"; or name it under materials.",
                "movers|{in: lobby, long: 10, wide: 10, high: 10}|movers.it doesn't move. Give it slides or a hinge, or put it under fixtures.",
                "masses|{in: bunk}|masses.it weighs nothing. Write mass: 45 kg; or holds: 80 kg for a store.",
                "masses|{in: bunk, mass: 45}|masses.it.mass: \"45\" has no unit. A mass is 45 kg or 45 lb.",
                "terminals|{kind: grille, in: lobby, opens: 2 Pa}|terminals.it.opens: a grille has no \"opens\". That is for a flap.",
                "terminals|{kind: grile, in: lobby}"
                        + "|terminals.it.kind: \"grile\" isn't one of its words. Nearest: \"grille\". It is grille, cowl, louvre, hood,"
                        + " chamber, filter, flap or damper.",
                "runs|{from: fan.outt, to: grille}|runs.it.from: there is no \"fan.outt\". Nearest: \"fan.out\" (a spigot).",
                "runs|{from: fan.out}|runs.it needs \"to\": where its air goes. It is the name of a spigot or a terminal, or takeoff.",
                "runs|{from: fan.out, to: grille, path: [{left: 20, right: 30}]}|runs.it.path[1] goes left and right at once. Keep one of them.",
                "runs|{from: fan.out, to: grille, path: [{left: 20, at: {rear: 4}}]}"
                        + "|runs.it.path[1] says how far it goes and where it ends. Keep the way or \"at\".",
                "runs|{from: fan.out, to: grille, path: [{left: rest, round: 20, wide: 30}]}"
                        + "|runs.it.path[1] is round and has other sizes too. Write round alone, or wide and high.",
                "runs|{from: fan.out, to: grille, wide: 300}"
                        + "|runs.it has no \"wide\". Sections stand in the path: path: [{wide: 300, high: 70}, ...].",
                "lines|{kind: cable, from: fan, to: outside, round: 8, fall: 2 %}|lines.it.fall: a cable line has no \"fall\". That is for a drain or water.",
                "lines|{kind: cable, from: fan, to: outside}|lines.it needs its size. Write round: 26, or wide: 70, high: 35.",
                "units|{in: loft, long: 450, wide: 700, high: 200 ± 300}"
                        + "|units.it.high: \"200 ± 300\": less its tolerance, nothing is left. Write a smaller tolerance.",
                "units|{in: loft, at: {roof: 20}, long: 450}"
                        + "|units.it.at: loft is a cavity and has no \"roof\". It has rear, front, left, right, floor, ceiling or top; or x, y, z.",
                "units|{in: loft, at: {back: 20}, long: 450}|units.it.at has no \"back\". The aft face is \"rear\".",
                "units|{in: loft, round: 100, wide: 100, high: 20}|units.it is round and has wide and high too. A round thing has one other size, along its axis.",
                "units|{in: loft, spigots: {a: {face: top, wide: 100, high: 20}}}"
                        + "|units.it.spigots.a.high: the top face has no \"high\". Its other size is \"long\".",
                "units|{in: loft, spigots: {a: {face: left}}}"
                        + "|units.it.spigots.a needs its size: round, or wide and high. Write round: 100; or wide: 240, high: 90.",
                "units|{in: loft, hung-from: top, stands-on: floor}|units.it hangs and stands. Leave out hung-from or stands-on.",
                "units|{like: fam}|units.it.like: there is no \"fam\" in its section. Nearest: \"fan\".",
                "units|{like: it}|units.it.like: it is a copy of itself, by way of it. One of them must stand by itself.",
                "trailers|{wide: 2000}|trailers.it needs its deck: long and wide, or an outline. Write long: 6000, wide: 2440.",
                "trailers|{long: 3000, wide: 2000, dock: {face: rear, to: bunk.back}}"
                        + "|trailers.it.dock.to: a trailer has no face \"back\". It has rear, front, left and right.",
                "stances|{fan: open}|stances.it.fan: \"fan\" is a unit. Here stands the name of a mass, a mover, a trailer or an opening.",
                "stances|{bunk: away, road: maybe}|stances.it.road: \"maybe\" isn't one of its words. It is yes, no, true or false.",
                "situations|{fan: full}|situations.it.fan: \"full\" is no state of fan, a unit. It can be off.",
                "situations|{stance: homr}|situations.it.stance: there is no \"homr\" under stances. There are none.",
                "options|cavities.loft.ceiling.drop|options.it: \"cavities.loft.ceiling.drop\" stands where an edit is meant."
                        + " Write PATH=VALUE, as cavities.loft.ceiling.drop=16.5; a value with braces in quotes.",
                "options|[cavities.loft.cieling.drop=3]"
                        + "|options.it[1]: there is no \"cavities.loft.cieling.drop\" to edit: cavities.loft has no \"cieling\"."
                        + " Nearest: \"cavities.loft.ceiling.drop\".",
            })
    void told(String section, String thing, String words) {
        assertEquals(List.of(words), wrong(section, thing));
    }
}
