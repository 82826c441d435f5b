package org.spile.exporters.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.spile.analysis.whole.Aim;
import org.spile.analysis.whole.SomeStances;
import org.spile.analysis.whole.Study;
import org.spile.analysis.whole.Variation;
import org.spile.geometry.file.HouseFile;
import org.spile.geometry.file.HouseResult;
import org.spile.geometry.file.Problem;
import org.spile.geometry.file.ReadResult;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.Trouble;
import org.spile.geometry.kernel.measure.Ask;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.QuantityText;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Sign;
import org.spile.geometry.kernel.measure.Written;

/**
 * The values that a command line sweeps.
 *
 * <p>What the geometry rests on is worked out again with other values; any other number of the file is typed over and the
 * file read again.
 */
final class VaryWords {
    static final CommandOption VARY =
            CommandOption.repeated("vary", "PATH=FROM..TO", "A value to sweep; behind TO may stand by STEP.");
    static final String FORM =
            "write --vary 'PATH=FROM..TO by STEP', as --vary 'cavities.loft.ceiling.drop=0..20 by 2'";

    private static final Pattern RANGE =
            Pattern.compile("([^=]+)=(.+?)\\.\\.(.+?)(?:\\s+by\\s+(.+?))?(?:\\s+(least|most))?\\s*");
    private static final Pattern TYPED = Pattern.compile("([-+]?[0-9]*\\.?[0-9]+)\\s*(.*)");
    private static final String NO_NUMBER = "no-number";
    private static final int STEPS = 10;

    private final Opened.Sound opened;
    private final Words words;
    private final QuantityText quantities;
    private final List<Variation> variations = new ArrayList<>();
    private final Set<String> typedOver = new LinkedHashSet<>();
    private final List<Refusal> refused = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    private VaryWords(Opened.Sound opened, Words words) {
        this.opened = opened;
        this.words = words;
        this.quantities = HouseFile.quantities(Path.of(opened.file()));
    }

    /** Reads them; what is wrong is in {@link #refused} and {@link #problems}. */
    static VaryWords in(Opened.Sound opened, Words words) {
        var read = new VaryWords(opened, words);
        List<String> asked = words.values(VARY.name());
        if (asked.isEmpty()) {
            read.refused.add(new Refusal("study needs --vary", FORM));
        } else if (asked.size() > Study.MOST_VARIATIONS) {
            read.refused.add(new Refusal(
                    asked.size() + " values are more than a table can show",
                    "vary " + Study.MOST_VARIATIONS
                            + " at most; to sweep several together join them, as A+B=FROM..TO"));
        } else {
            asked.forEach(read::read);
        }
        read.limit();
        return read;
    }

    List<Variation> variations() {
        return List.copyOf(variations);
    }

    List<Refusal> refused() {
        return List.copyOf(refused);
    }

    /** What the house file says to a value that isn't one. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The house with other values, in the variations' units. */
    Resolved variant(Map<String, Double> values) {
        var edits = new ArrayList<>(words.values("set"));
        var others = new LinkedHashMap<String, Double>();
        values.forEach((path, value) -> {
            if (typedOver.contains(path)) {
                edits.add(path + "=" + Written.exact(value) + unit(path));
            } else {
                others.put(path, value);
            }
        });
        if (edits.size() == words.values("set").size()) {
            return opened.house().with(others);
        }
        var result = HouseFile.house(Path.of(opened.file()), opened.options(), edits);
        if (result instanceof HouseResult.Wrong wrong) {
            return new Resolved.Wrong(wrong.problems().stream()
                    .map(each -> new Trouble(each.path(), each.says(), each.advice(), each.doubt()))
                    .toList());
        }
        House house = ((HouseResult.Sound) result).house();
        House looked = words.values("stance").isEmpty() ? house : SomeStances.of(house, words.values("stance"));
        return others.isEmpty() ? new Resolved.Sound(looked) : looked.with(others);
    }

    private String unit(String path) {
        return variations.stream()
                .filter(variation -> variation.paths().contains(path))
                .map(variation -> variation.unit().isEmpty() ? "" : " " + variation.unit())
                .findFirst()
                .orElse("");
    }

    private void read(String asked) {
        Matcher range = RANGE.matcher(asked.strip());
        if (!range.matches()) {
            refused.add(new Refusal("--vary \"" + asked + "\" is no range of a value", FORM));
            return;
        }
        List<String> paths = Arrays.stream(range.group(1).split("\\+", -1))
                .map(String::strip)
                .toList();
        var from = range.group(2).strip();
        var to = range.group(3).strip();
        var step = Optional.ofNullable(range.group(4)).map(String::strip);
        var aim = Optional.ofNullable(range.group(5)).map(word -> Aim.valueOf(word.toUpperCase(Locale.ROOT)));
        List<Reading> known = paths.stream()
                .flatMap(path -> Optional.ofNullable(opened.house().readings().get(path)).stream())
                .toList();
        if (known.size() == paths.size()) {
            inBase(asked, paths, known.get(0).kind(), from, to, step, aim.orElse(Aim.usual(paths.get(0))));
        } else {
            paths.forEach(path -> checkTypedOver(path, from));
            if (refused.isEmpty() && problems.isEmpty()) {
                asTyped(asked, paths, from, to, step, aim.orElse(Aim.usual(paths.get(0))));
            }
        }
    }

    /** A value that the geometry rests on: read as its kind, in base units. */
    private void inBase(
            String asked, List<String> paths, Kind kind, String from, String to, Optional<String> step, Aim aim) {
        var ask = new Ask(kind, Sign.ANY);
        var first = quantities.band(from + ".." + to, ask);
        if (first.refusal().isPresent()) {
            refused.add(new Refusal(
                    "--vary \"" + asked + "\": " + first.refusal().get().says(), FORM));
            return;
        }
        double low = first.value().orElseThrow().low().value();
        double high = first.value().orElseThrow().high().value();
        double by = (high - low) / STEPS;
        if (step.isPresent()) {
            var read = quantities.reading(step.get(), ask);
            if (read.refusal().isPresent()) {
                refused.add(new Refusal(
                        "--vary \"" + asked + "\": " + read.refusal().get().says(), FORM));
                return;
            }
            by = read.value().orElseThrow().value();
        }
        add(asked, paths, kind.baseSymbol(), low, high, by, aim);
    }

    /** Any other number of the file, typed over in its own unit. */
    private void asTyped(String asked, List<String> paths, String from, String to, Optional<String> step, Aim aim) {
        Matcher last = TYPED.matcher(to);
        Matcher first = TYPED.matcher(from);
        Matcher by = TYPED.matcher(step.orElse("1"));
        if (!last.matches() || !first.matches() || !by.matches()) {
            refused.add(new Refusal("--vary \"" + asked + "\" is no range of a number", FORM));
            return;
        }
        String unit = last.group(2).strip();
        boolean alike = first.group(2).isBlank() || first.group(2).strip().equals(unit);
        boolean stepAlike =
                step.isEmpty() || by.group(2).isBlank() || by.group(2).strip().equals(unit);
        if (!alike || !stepAlike) {
            refused.add(new Refusal("--vary \"" + asked + "\" mixes units", "write FROM, TO and STEP in one unit"));
            return;
        }
        double low = Double.parseDouble(first.group(1));
        double high = Double.parseDouble(last.group(1));
        typedOver.addAll(paths);
        add(
                asked,
                paths,
                unit,
                low,
                high,
                step.isPresent() ? Double.parseDouble(by.group(1)) : (high - low) / STEPS,
                aim);
    }

    private void add(String asked, List<String> paths, String unit, double low, double high, double by, Aim aim) {
        if (low > high) {
            refused.add(new Refusal("--vary \"" + asked + "\" goes from high to low", "write the lower one first"));
        } else if (!(by > 0) && low < high) {
            refused.add(new Refusal("--vary \"" + asked + "\" has a step of nothing or less", "write by STEP above 0"));
        } else {
            double step = by > 0 ? by : 1;
            long count = Variation.count(low, high, step);
            if (count > Study.MOST_POINTS) {
                refused.add(tooMany(count));
            } else {
                variations.add(new Variation(paths, unit, Variation.range(low, high, step), aim));
            }
        }
    }

    private void limit() {
        long points = 1;
        for (Variation variation : variations) {
            points *= variation.values().size();
        }
        if (points > Study.MOST_POINTS && refused.isEmpty()) {
            refused.add(tooMany(points));
        }
    }

    private static Refusal tooMany(long points) {
        return new Refusal(
                points + " points are too many",
                "a study has " + Study.MOST_POINTS + " at most; take a longer step or a shorter range");
    }

    /** A path outside the geometry must be a number all the same: then a number may stand there, and other words may not. */
    private void checkTypedOver(String path, String value) {
        ReadResult number = typed(path, value);
        if (number instanceof ReadResult.Wrong wrong) {
            Set<String> known = opened.house().readings().keySet();
            Optional<String> near = NearestName.of(path, known);
            problems.addAll(wrong.problems());
            refused.add(new Refusal(
                    "--vary can't sweep " + path,
                    near.map(name -> "did you mean " + name + "?")
                            .orElse("name a number of the house file, as cavities.loft.ceiling.drop")));
        } else if (typed(path, NO_NUMBER) instanceof ReadResult.Sound) {
            refused.add(new Refusal(
                    "--vary can't sweep " + path + ": it isn't a number",
                    "name a number of the house file, as cavities.loft.ceiling.drop"));
        }
    }

    private ReadResult typed(String path, String value) {
        var edits = new ArrayList<>(words.values("set"));
        edits.add(path + "=" + value);
        return HouseFile.read(Path.of(opened.file()), opened.options(), edits);
    }
}
