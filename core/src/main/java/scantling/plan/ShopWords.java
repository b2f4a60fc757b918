package scantling.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import scantling.joinery.JointRules;
import scantling.joinery.OwnRows;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.piece.Problem;
import scantling.piece.SettingsText.Entry;
import scantling.piece.Spelling;
import scantling.stock.HardwareProfiles;

/** Reads lengths and their names out of a shop's settings, and tells what is wrong with them. */
final class ShopWords {
    private static final String OWN = "the shop's own";

    private final List<Problem> problems;

    ShopWords(List<Problem> problems) {
        this.problems = problems;
    }

    void problem(Entry entry, String message, String remedy) {
        problems.add(new Problem(entry.span(), message, remedy));
    }

    /** Those whose key is one of the known ones; the others are told. */
    List<Entry> known(List<Entry> entries, List<String> keys, String what) {
        List<Entry> known = new ArrayList<>();
        for (Entry entry : entries) {
            if (keys.contains(entry.key())) {
                known.add(entry);
            } else {
                problem(
                        entry,
                        "No %s is called \"%s\".".formatted(what, entry.key()),
                        (Spelling.maybe(entry.key(), keys) + " There are: " + String.join(", ", keys) + ".").strip());
            }
        }
        return known;
    }

    /** Lengths by their keys. @param named lengths that may be given by a name */
    Map<String, Length> lengths(List<Entry> entries, Map<String, Length> named) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        entries.forEach(entry -> length(entry, named).ifPresent(length -> lengths.put(entry.key(), length)));
        return lengths;
    }

    private Optional<Length> length(Entry entry, Map<String, Length> named) {
        Optional<Length> length = Optional.ofNullable(named.get(entry.value()))
                .or(() -> LengthReader.read(entry.value(), Unit.MM).filter(one -> !one.isNegative()));
        if (length.isEmpty()) {
            problem(
                    entry,
                    "\"%s\" is no length for \"%s\".".formatted(entry.value(), entry.key()),
                    "Write a length that is not negative, such as 3.2 mm or 1/8 in.");
        }
        return length;
    }

    /** Rules by their keys, and rows of tables under the heading that names each. */
    JointRules joints(List<Entry> entries) {
        Map<String, String> own = new LinkedHashMap<>();
        OwnRows rows = OwnRows.of(rows(entries));
        List<Entry> rules =
                entries.stream().filter(entry -> entry.heading().isEmpty()).toList();
        for (Entry entry : known(rules, JointRules.keys(), "rule for joints")) {
            tried(
                            entry,
                            () -> JointRules.with(
                                    key -> key.equals(entry.key()) ? Optional.of(entry.value()) : Optional.empty(),
                                    rows),
                            "Write a length, a share such as 1/3, or a list of sizes, as it is for this rule.")
                    .ifPresent(fine -> own.put(entry.key(), entry.value()));
        }
        return JointRules.with(key -> Optional.ofNullable(own.get(key)), rows);
    }

    /** The rows that can be read, each tried with those before it; screws first, which pocket screws name. */
    private Map<String, Map<String, String>> rows(List<Entry> entries) {
        Map<String, List<Entry>> byHeading = new LinkedHashMap<>();
        entries.stream()
                .filter(entry -> !entry.heading().isEmpty())
                .forEach(entry -> byHeading
                        .computeIfAbsent(entry.heading(), key -> new ArrayList<>())
                        .add(entry));
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        List<List<Entry>> screwsFirst = byHeading.values().stream()
                .sorted(Comparator.comparing(of -> !of.get(0).heading().startsWith("screw")))
                .toList();
        for (List<Entry> of : screwsFirst) {
            Map<String, Map<String, String>> with = new LinkedHashMap<>(rows);
            Map<String, String> row = new LinkedHashMap<>();
            of.forEach(entry -> row.put(entry.key(), entry.value()));
            with.put(of.get(0).heading(), row);
            tried(
                            of.get(0),
                            () -> JointRules.with(key -> Optional.empty(), OwnRows.of(with)),
                            "Write a row of a table with its sizes, as in: screw no. 8: {hardwood: 2.8 mm}.")
                    .ifPresent(fine -> rows.putAll(with));
        }
        return rows;
    }

    private Optional<JointRules> tried(Entry entry, Supplier<JointRules> rules, String remedy) {
        try {
            return Optional.of(rules.get());
        } catch (IllegalArgumentException cannotBe) {
            problem(entry, String.valueOf(cannotBe.getMessage()), remedy);
            return Optional.empty();
        }
    }

    /** Sizes under their profile, one or several: {@code lengths: 300, 350, 400}. */
    HardwareProfiles hardware(List<Entry> entries) {
        HardwareProfiles profiles = HardwareProfiles.standard();
        for (Entry entry : entries) {
            List<String> names = profiles.names();
            List<Dim> sizes = sizes(entry);
            if (!names.contains(entry.heading())) {
                problem(
                        entry,
                        "No fitting is called \"%s\".".formatted(entry.heading()),
                        (Spelling.maybe(entry.heading(), names) + " There are: " + String.join(", ", names) + ".")
                                .strip());
            } else if (!profiles.sizes(entry.heading()).containsKey(entry.key())) {
                problem(
                        entry,
                        "%s has no size called \"%s\".".formatted(entry.heading(), entry.key()),
                        "It has: "
                                + String.join(
                                        ", ", profiles.sizes(entry.heading()).keySet()) + ".");
            } else if (!sizes.isEmpty()) {
                profiles = profiles.with(entry.heading(), entry.key(), sizes);
            }
        }
        return profiles;
    }

    private List<Dim> sizes(Entry entry) {
        List<Dim> sizes = new ArrayList<>();
        for (String one : entry.value().split(",", -1)) {
            length(new Entry(entry.heading(), entry.key(), one.strip(), entry.span()), Map.of())
                    .ifPresent(length -> sizes.add(Dim.lookedUp(length, "shop", entry.key(), OWN)));
        }
        return sizes;
    }
}
