package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An entity of a DXF text with the groups that follow it.
 *
 * @param type LINE, LWPOLYLINE ...
 * @param groups its groups, in order
 */
record DxfEntity(String type, List<DxfPair> groups) {
    DxfEntity {
        groups = List.copyOf(groups);
    }

    /** The entities of model space, in order; those drawn on paper or hidden are left out. */
    static List<DxfEntity> of(List<DxfPair> pairs) throws DrawingFault {
        var entities = new ArrayList<DxfEntity>();
        int at = sectionStart(pairs);
        while (at < pairs.size() && !pairs.get(at).starts("ENDSEC")) {
            int end = at + 1;
            while (end < pairs.size() && pairs.get(end).code() != 0) {
                end++;
            }
            var entity = new DxfEntity(pairs.get(at).value(), pairs.subList(at + 1, end));
            if (entity.whole(67, 0) == 0 && entity.whole(60, 0) == 0) {
                entities.add(entity);
            }
            at = end;
        }
        if (at >= pairs.size()) {
            throw DrawingFault.error("its ENTITIES section has no end.", "The file is cut short; save it anew.");
        }
        return entities;
    }

    private static int sectionStart(List<DxfPair> pairs) throws DrawingFault {
        for (int i = 1; i < pairs.size(); i++) {
            if (pairs.get(i - 1).starts("SECTION")
                    && pairs.get(i).code() == 2
                    && pairs.get(i).value().equals("ENTITIES")) {
                return i + 1;
            }
        }
        throw DrawingFault.error("it has no ENTITIES section: nothing is drawn in it.", "Is it the right file?");
    }

    String layer() {
        return group(8).map(DxfPair::value).orElse("0");
    }

    Optional<DxfPair> group(int code) {
        return groups.stream().filter(pair -> pair.code() == code).findFirst();
    }

    double number(int code, double otherwise) throws DrawingFault {
        Optional<DxfPair> group = group(code);
        return group.isPresent() ? group.get().number() : otherwise;
    }

    int whole(int code, int otherwise) throws DrawingFault {
        Optional<DxfPair> group = group(code);
        return group.isPresent() ? group.get().whole() : otherwise;
    }

    /** The number of a group that the entity can't be drawn without. */
    double needed(int code) throws DrawingFault {
        Optional<DxfPair> group = group(code);
        if (group.isEmpty()) {
            int line = groups.isEmpty() ? 0 : groups.get(0).line();
            throw DrawingFault.error(
                    "the " + type + " before line " + line + " lacks its group " + code + ".", "Save the file anew.");
        }
        return group.get().number();
    }
}
