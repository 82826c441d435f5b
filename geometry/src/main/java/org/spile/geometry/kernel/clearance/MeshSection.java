package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Mesh;

/**
 * The section of a mesh by a plane, in the plane's own coordinates.
 *
 * <p>A closed mesh gives rings only: outer ones counter-clockwise, holes clockwise, seen against the plane's normal. A
 * surface may give open chains as well. A shell that only touches the plane is not cut; where a shell passes through and
 * has a face in the plane, the section is the one just behind it, on the side that the normal points away from. Corners
 * within the contact tolerance of the plane lie in it. Lengths in mm.
 *
 * @param rings closed lines, the last corner joined to the first
 * @param chains open lines, where the surface ends or its triangles don't agree which side they show
 * @param isBounded whether the mesh bounds a space, so that the rings do bound an area
 */
public record MeshSection(List<List<Vector2D>> rings, List<List<Vector2D>> chains, boolean isBounded) {
    /** Takes copies of the lists. */
    public MeshSection {
        rings = rings.stream().map(List::copyOf).toList();
        chains = chains.stream().map(List::copyOf).toList();
    }

    /**
     * Cuts a mesh.
     *
     * @param mesh what is cut
     * @param plane the plane
     * @return the section; without rings or chains if the plane misses or only touches
     */
    public static MeshSection of(Mesh mesh, CutPlane plane) {
        SectionLines lines = new SectionLines(mesh, plane);
        return new MeshSection(lines.rings(), lines.chains(), mesh.isClosed());
    }

    /**
     * The area within the section.
     *
     * @return mm²; empty if the mesh bounds no space
     */
    public OptionalDouble areaMm2() {
        return isBounded
                ? OptionalDouble.of(
                        rings.stream().mapToDouble(MeshSection::area).sum())
                : OptionalDouble.empty();
    }

    /**
     * The section as outlines. A single ring stays exact; several lie on the grid of {@link Regions}, within 1 µm.
     *
     * @return the outlines; empty if the mesh bounds no space, or a ring touches itself
     */
    public Optional<List<Outline>> outlines() {
        if (!isBounded || rings.stream().anyMatch(ring -> Outline.check(ring).isPresent())) {
            return Optional.empty();
        }
        if (rings.size() == 1) {
            return Optional.of(List.of(Outline.of(rings.get(0))));
        }
        // A ring lies within every larger one that it meets at all, so the larger ones are laid down or taken off
        // first.
        List<Outline> region = List.of();
        for (List<Vector2D> ring : rings.stream()
                .sorted(Comparator.comparingDouble(ring -> -Math.abs(area(ring))))
                .toList()) {
            List<Outline> one = List.of(Outline.of(ring));
            if (area(ring) > 0) {
                List<Outline> both = new ArrayList<>(region);
                both.addAll(one);
                region = Regions.union(both);
            } else {
                region = Regions.difference(region, one);
            }
        }
        return Optional.of(region);
    }

    /** Signed area, about the first corner (Gauss' shoelace sum). */
    private static double area(List<Vector2D> ring) {
        Vector2D base = ring.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            twice += ring.get(i).subtract(base).signedArea(ring.get(i + 1).subtract(base));
        }
        return twice / 2;
    }
}
