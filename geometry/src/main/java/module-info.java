/**
 * Shapes, houses and the house file.
 *
 * <p>Layers, each using only those before it: {@code kernel} (measures, plane outlines, solids, clearance), then
 * {@code house} (the parts of a house, without any file), then {@code file} (reading and checking the house file).
 *
 * <p>Packages are exported from their first public type on, one line each: an empty one doesn't compile.
 */
module org.spile.geometry {
    exports org.spile.geometry.file;
    exports org.spile.geometry.house;
    exports org.spile.geometry.house.duct;
    exports org.spile.geometry.house.material;
    exports org.spile.geometry.house.told;
    exports org.spile.geometry.kernel.clearance;
    exports org.spile.geometry.kernel.measure;
    exports org.spile.geometry.kernel.planar;
    exports org.spile.geometry.kernel.solid;

    requires transitive org.apache.commons.geometry.core;
    requires transitive org.apache.commons.geometry.euclidean;
    requires org.locationtech.jts;
    requires org.locationtech.jts.io;
    requires org.snakeyaml.engine;
    requires com.fasterxml.jackson.core;
    requires com.fasterxml.jackson.databind;
}
