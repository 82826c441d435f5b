package org.spile.analysis.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.Part;

/** Who follows a surface down, and who stays, in one scene. */
final class Followers {
    private final Site site;
    private final Map<String, Follows> byId;

    private Followers(Site site, Map<String, Follows> byId) {
        this.site = site;
        this.byId = byId;
    }

    /** Sorts a scene's parts by how they follow the reading of a path. */
    static Followers of(Site site, String dropPath) {
        Map<String, Follows> byId = new HashMap<>();
        site.scene().parts().forEach(part -> byId.put(part.id(), Follows.of(part, dropPath)));
        return new Followers(site, byId);
    }

    Site site() {
        return site;
    }

    Follows how(Part part) {
        return byId.get(part.id());
    }

    /** The solid parts that go down as a whole. */
    List<Part> whole() {
        return site.solids().stream().filter(part -> how(part) == Follows.WHOLE).toList();
    }
}
