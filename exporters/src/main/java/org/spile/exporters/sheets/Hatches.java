package org.spile.exporters.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.spile.exporters.drawing.Material;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;

/** Which hatching shows a part where it is cut; hollow things and rooms for service have none. */
final class Hatches {
    private static final Map<String, Material> BY_MATERIAL = Map.ofEntries(
            Map.entry("ply", Material.PLY),
            Map.entry("batten", Material.TIMBER),
            Map.entry("timber", Material.TIMBER),
            Map.entry("pir", Material.FOAM),
            Map.entry("foam", Material.FOAM),
            Map.entry("cork", Material.FOAM),
            Map.entry("glass-wool", Material.WOOL),
            Map.entry("steel", Material.METAL),
            Map.entry("alu", Material.METAL),
            Map.entry("galv", Material.METAL));

    private Hatches() {}

    static Optional<Material> of(Part part) {
        return switch (part.kind()) {
            case LINING, SHELL -> Optional.of(Material.GENERAL);
            case FIXTURE -> Optional.of(Material.TIMBER);
            case UNIT, SERVICE, DUCT, LINE, TERMINAL, MOVER -> Optional.empty();
        };
    }

    static Material of(String material) {
        return BY_MATERIAL.getOrDefault(material, Material.GENERAL);
    }

    static boolean solid(PartKind kind) {
        return List.of(PartKind.LINING, PartKind.SHELL, PartKind.FIXTURE).contains(kind);
    }
}
