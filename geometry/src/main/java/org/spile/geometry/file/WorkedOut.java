package org.spile.geometry.file;

import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.Trouble;

/** Works a told house out, and gives every trouble its place in the file. */
final class WorkedOut {
    private WorkedOut() {}

    static HouseResult of(ReadResult read) {
        if (read instanceof ReadResult.Wrong wrong) {
            return new HouseResult.Wrong(wrong.problems());
        }
        var told = (ReadResult.Sound) read;
        Resolved resolved = House.of(told.house());
        if (resolved instanceof Resolved.Sound sound) {
            return new HouseResult.Sound(sound.house(), told.places(), told.text());
        }
        var problems = new Problems();
        for (Trouble trouble : ((Resolved.Wrong) resolved).troubles()) {
            problems.add(new Problem(
                    told.places().of(trouble.path()),
                    trouble.path(),
                    sentence(trouble.says()),
                    trouble.advice(),
                    trouble.doubt()));
        }
        return new HouseResult.Wrong(problems.list());
    }

    private static String sentence(String says) {
        return says.endsWith(".") || says.endsWith("?") ? says : says + ".";
    }
}
