/**
 * One package for each question asked of a house.
 *
 * <p>{@code finding} is the common form of every answer; each question's package stands above it and beside the others.
 *
 * <p>Packages are exported from their first public type on, one line each: an empty one doesn't compile.
 */
module org.spile.analysis {
    exports org.spile.analysis.duct;
    exports org.spile.analysis.finding;
    exports org.spile.analysis.fit;
    exports org.spile.analysis.place;
    exports org.spile.analysis.whole;

    requires org.apache.commons.numbers.rootfinder;
    requires transitive org.spile.geometry;
}
