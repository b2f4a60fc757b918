package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.joinery.JointRules;
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

    JointRules joints(List<Entry> entries) {
        Map<String, String> own = new LinkedHashMap<>();
        for (Entry entry : known(entries, JointRules.keys(), "rule for joints")) {
            try {
                JointRules.with(key -> key.equals(entry.key()) ? Optional.of(entry.value()) : Optional.empty());
                own.put(entry.key(), entry.value());
            } catch (IllegalArgumentException cannotBe) {
                problem(
                        entry,
                        String.valueOf(cannotBe.getMessage()),
                        "Write a length, a share such as 1/3, or a list of sizes, as it is for this rule.");
            }
        }
        return JointRules.with(key -> Optional.ofNullable(own.get(key)));
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
