package org.spile.geometry.file;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldMaterial;
import org.spile.geometry.kernel.measure.QuantityText;

/**
 * Reads the tree of a file as a house.
 *
 * @param name what to call the file in problems
 * @param drawings the drawings beside it
 */
record Binding(String name, Drawings drawings) {

    ReadResult read(String text) {
        Tree tree = Tree.of(name, text);
        var problems = new Problems();
        problems.addAll(tree.problems());
        if (tree.broken()) {
            return new ReadResult.Wrong(problems.list());
        }
        Spot root = new SpotBuilder(problems).build(tree.root());
        Scribe scribe = scribe(root);
        scribe.materials(materials(root));
        Ids.check(root, scribe);
        Optional<ToldHouse> house = HouseShape.SHAPE.read(root, scribe);
        problems.addAll(scribe.problems());
        return house.isPresent() && problems.none()
                ? new ReadResult.Sound(house.get(), places(root), text)
                : new ReadResult.Wrong(problems.list());
    }

    /** The file's values with their paths, however wrong they are; nothing if its form is broken. */
    Optional<Spot> root(String text) {
        Tree tree = Tree.of(name, text);
        return tree.broken() ? Optional.empty() : Optional.of(new SpotBuilder(new Problems()).build(tree.root()));
    }

    private Scribe scribe(Spot root) {
        boolean inches = root.child(HouseShape.LENGTHS.name())
                .filter(unit -> unit.text().equals("in"))
                .isPresent();
        QuantityText quantities = inches ? QuantityText.inInches() : QuantityText.inMillimetres();
        return new Scribe(root, quantities, Names.of(root), drawings);
    }

    /** The file's own materials, before any layer needs one; what is wrong with them is told when their turn comes. */
    private Materials materials(Spot root) {
        Map<String, ToldMaterial> own = root.child(HouseShape.MATERIALS.name())
                .flatMap(spot -> HouseShape.MATERIALS.form().read(spot, scribe(root)))
                .orElse(Map.of());
        return Materials.shipped().with(own.values());
    }

    private Places places(Spot root) {
        var byPath = new HashMap<String, Place>();
        gather(root, byPath);
        return new Places(Place.whole(name), byPath);
    }

    private static void gather(Spot spot, Map<String, Place> byPath) {
        byPath.put(spot.path(), spot.place());
        spot.items().forEach(item -> gather(item, byPath));
        for (Spot.Entry entry : spot.entries()) {
            gather(entry.value(), byPath);
            // A section or a thing is found by its name, not by the first of its keys.
            if (!spot.path().contains(".")) {
                byPath.put(entry.value().path(), entry.keyPlace());
            }
        }
    }
}
