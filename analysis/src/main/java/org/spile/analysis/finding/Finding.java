package org.spile.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One answer.
 *
 * @param id stable from run to run
 * @param check dotted name, as {@code fit.clearance}
 * @param subject path of the thing asked about
 * @param against path of what it was held against; empty if nothing
 * @param stance the stances it holds in
 * @param situation the situations it holds in
 * @param verdict what came of it
 * @param value found
 * @param required demanded
 * @param margin found less demanded
 * @param worst margin with its tolerances stacked
 * @param likely margin that is likely: tolerances as a root of squares about their middles, movements in full; decides nothing
 * @param stack the layers of the value
 * @param at and to witness points in the site frame (mm)
 * @param where along a run or travel
 * @param because one plain sentence with the numbers
 * @param restsOn paths of the assumed values it rests on
 * @param remedies computed changes, best first
 * @param source of the demand: the file's path, a standard, common practice
 */
public record Finding(
        String id,
        String check,
        String subject,
        Optional<String> against,
        List<String> stance,
        List<String> situation,
        Verdict verdict,
        Optional<Quantity> value,
        Optional<Quantity> required,
        Optional<Quantity> margin,
        Optional<Quantity> worst,
        Optional<Quantity> likely,
        List<Layer> stack,
        Optional<Vector3D> at,
        Optional<Vector3D> to,
        Optional<Where> where,
        String because,
        List<String> restsOn,
        List<Remedy> remedies,
        String source) {
    /** Copies the lists. */
    public Finding {
        stance = List.copyOf(stance);
        situation = List.copyOf(situation);
        stack = List.copyOf(stack);
        restsOn = List.copyOf(restsOn);
        remedies = List.copyOf(remedies);
    }

    /**
     * The id of a question: its check, its subject and what it is held against. The same question asked in another stance
     * has the same id.
     */
    public static String idOf(String check, String subject, Optional<String> against) {
        return check + "/" + subject + against.map(other -> "/" + other).orElse("");
    }

    /**
     * A question that isn't settled, because a value is missing.
     *
     * @param check dotted name
     * @param subject path of the thing asked about
     * @param missing path of the value that would settle it; empty if no one value would
     * @param because one plain sentence that says what would settle it
     */
    public static Finding open(String check, String subject, Optional<String> missing, String because) {
        return new Finding(
                idOf(check, subject, missing),
                check,
                subject,
                missing,
                List.of(),
                List.of(),
                Verdict.NOT_KNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                because,
                List.of(),
                List.of(),
                "");
    }

    /** This answer, holding in these stances and situations. */
    public Finding heldIn(List<String> stances, List<String> situations) {
        return new Finding(
                id,
                check,
                subject,
                against,
                stances,
                situations,
                verdict,
                value,
                required,
                margin,
                worst,
                likely,
                stack,
                at,
                to,
                where,
                because,
                restsOn,
                remedies,
                source);
    }

    /** This answer with what would cure it. */
    public Finding with(List<Remedy> cures) {
        return new Finding(
                id, check, subject, against, stance, situation, verdict, value, required, margin, worst, likely, stack,
                at, to, where, because, restsOn, cures, source);
    }
}
