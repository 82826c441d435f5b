package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Verdict;
import org.spile.exporters.drawing.TitleBlock;
import org.spile.exporters.drawing.layout.Panel;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Scene;

/** What the sheets are about: a house, its findings, and the number each flagged finding carries on every sheet. */
public final class Subject {
    private final String name;
    private final House house;
    private final List<Finding> findings;
    private final List<Finding> flagged;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private Subject(String name, House house, List<Finding> findings) {
        this.name = name;
        this.house = house;
        this.findings = List.copyOf(findings);
        this.flagged = findings.stream().filter(Subject::canBeFlagged).toList();
        for (Finding finding : flagged) {
            numbers.put(finding.id(), numbers.size() + 1);
        }
    }

    /**
     * A house and its findings.
     *
     * @param name the house file's name without its ending
     * @param findings worst first; those that don't pass and have a place get a flag
     */
    public static Subject of(String name, House house, List<Finding> findings) {
        return new Subject(name, house, findings);
    }

    private static boolean canBeFlagged(Finding finding) {
        return finding.verdict() != Verdict.PASSES
                && finding.at().isPresent()
                && finding.to().isPresent();
    }

    /** The house. */
    public House house() {
        return house;
    }

    /** The house file's name. */
    public String name() {
        return name;
    }

    /** What people call the house. */
    public String title() {
        return house.told().title().isEmpty() ? name : house.told().title();
    }

    /** The scene of the home stance. */
    public Scene home() {
        return house.scene(house.stances().get(0));
    }

    /** Findings that don't pass and have a place, in the order of their numbers. */
    public List<Finding> flagged() {
        return flagged;
    }

    /** What a check says of a thing, worst first. */
    List<Finding> findingsOf(String subject, String check) {
        return findings.stream()
                .filter(finding -> finding.subject().equals(subject) && Findings.isOf(check, finding.check()))
                .toList();
    }

    /** The number a finding carries, if it is flagged. */
    public OptionalInt number(Finding finding) {
        Integer number = numbers.get(finding.id());
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** A title block for a sheet of this house. */
    TitleBlock block(String what, String documentType) {
        var project = house.told().project();
        return TitleBlock.of(title(), documentType, project.number())
                .ownedBy(project.forWhom())
                .supplemented(what)
                .issued("", project.by(), "");
    }

    /** The list of findings that a sheet flags, with their numbers. */
    Panel findings(List<Finding> shown) {
        var items = new ArrayList<Panel.Item>();
        shown.stream()
                .filter(finding -> number(finding).isPresent())
                .sorted(Comparator.comparingInt(finding -> number(finding).orElseThrow()))
                .forEach(finding -> items.add(new Panel.Item(
                        Integer.toString(number(finding).orElseThrow()),
                        finding.verdict().word() + ": " + finding.because())));
        return new Panel("Findings", items);
    }

    /** What every sheet says for safety's sake. */
    static Panel cautions() {
        return new Panel(
                "Cautions",
                List.of(
                        new Panel.Item("", "Check every dimension on site before cutting."),
                        new Panel.Item(
                                "",
                                "Electric, refrigerant, gas, lifting, towing and structural work: local codes and licensed"
                                        + " trades decide.")));
    }
}
