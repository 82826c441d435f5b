package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A group of a DXF text: a code in one line, its value in the next.
 *
 * @param code the group code
 * @param value the value, without white space round it
 * @param line the line of the code
 */
record DxfPair(int code, String value, int line) {
    private static final Pattern CODE = Pattern.compile("-?\\d{1,4}");
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");

    /** The groups of a text up to its end mark. */
    static List<DxfPair> of(String text) throws DrawingFault {
        var pairs = new ArrayList<DxfPair>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i += 2) {
            String code = lines.get(i).strip();
            if (code.isEmpty() && lines.subList(i, lines.size()).stream().allMatch(String::isBlank)) {
                break;
            }
            if (!CODE.matcher(code).matches()) {
                String found = code.length() > 30 ? code.substring(0, 30) + "..." : code;
                throw DrawingFault.error(
                        "line " + (i + 1) + ": \"" + found + "\" stands where a DXF group code must.",
                        "The file is damaged or no DXF text; save it anew.");
            }
            if (i + 1 == lines.size()) {
                throw cutShort(i + 1);
            }
            var pair = new DxfPair(Integer.parseInt(code), lines.get(i + 1).strip(), i + 1);
            pairs.add(pair);
            if (pair.starts("EOF")) {
                return pairs;
            }
        }
        throw cutShort(lines.size());
    }

    private static DrawingFault cutShort(int line) {
        return DrawingFault.error("it ends in line " + line + " without EOF.", "The file is cut short; save it anew.");
    }

    /** Whether an entity, section or table of this name starts here. */
    boolean starts(String name) {
        return code == 0 && value.equals(name);
    }

    double number() throws DrawingFault {
        double number = NUMBER.matcher(value).matches() ? Double.parseDouble(value) : Double.NaN;
        if (!Double.isFinite(number)) {
            throw DrawingFault.error(
                    "line " + (line + 1) + ": \"" + Shown.cut(value) + "\" is no number.",
                    "The file is damaged; save it anew.");
        }
        return number;
    }

    int whole() throws DrawingFault {
        double number = number();
        if (number != Math.rint(number) || Math.abs(number) > 1e9) {
            throw DrawingFault.error(
                    "line " + (line + 1) + ": \"" + Shown.cut(value) + "\" is no whole number.",
                    "The file is damaged; save it anew.");
        }
        return (int) number;
    }
}
