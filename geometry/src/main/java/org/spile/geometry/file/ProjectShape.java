package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldProject;

/** What a title block says of the job. */
final class ProjectShape {
    private static final Key<String> NUMBER = Key.of("number", new TextForm("words"), "D", "the job's number");
    private static final Key<String> BY = Key.of("by", new TextForm("words"), "D", "who drew it");
    private static final Key<String> FOR = Key.of("for", new TextForm("words"), "D", "who it is for");

    static final Shape<ToldProject> SHAPE = Shape.of(
            "project",
            "a project",
            "What the title block of a drawing says of the job.",
            List.of(NUMBER, BY, FOR),
            values -> new ToldProject(values.text(NUMBER), values.text(BY), values.text(FOR)));

    private ProjectShape() {}
}
