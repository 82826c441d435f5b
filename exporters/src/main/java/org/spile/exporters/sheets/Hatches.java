package org.spile.exporters.sheets;

import java.util.Optional;
import org.spile.exporters.drawing.Material;
import org.spile.geometry.house.Part;

/** Which hatching shows a part where it is cut; hollow things and rooms for service have none. */
final class Hatches {
    private Hatches() {}

    static Optional<Material> of(Part part) {
        return switch (part.kind()) {
            case LINING, SHELL -> Optional.of(Material.GENERAL);
            case FIXTURE -> Optional.of(Material.TIMBER);
            case UNIT, SERVICE, DUCT, LINE, TERMINAL, MOVER -> Optional.empty();
        };
    }
}
