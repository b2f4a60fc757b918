package scantling.finishing;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Ledger;
import scantling.timber.Table;

/** Which parts are better finished before assembly, and why; rules in {@code finishing/first.csv}. */
final class First {
    private static final List<Rule> RULES = Table.read("finishing/first.csv").rows().stream()
            .map(row -> new Rule(row.text("rule").equals("back"), row.list("matches"), row.text("why")))
            .toList();

    /** @param inChannel whether it holds for parts in a groove or a rabbet only @param matches names of parts */
    private record Rule(boolean inChannel, List<String> matches, String why) {}

    private final Map<String, Boolean> heldInChannel = new HashMap<>();
    private final Map<String, Optional<String>> known = new HashMap<>();

    First(Assembly assembly) {
        for (Joint joint : assembly.joints()) {
            boolean channel = joint.kind() == Joint.Kind.GROOVE || joint.kind() == Joint.Kind.RABBET;
            heldInChannel.merge(joint.entering(), channel, Boolean::logicalOr);
        }
    }

    /** Why a part is finished first; nothing when it can wait. Names of two words match names of which one is inside the other. */
    Optional<String> why(Part part) {
        return known.computeIfAbsent(part.path(), path -> found(part));
    }

    private Optional<String> found(Part part) {
        List<String> names = Ledger.names(part.path()).stream()
                .map(name -> Ledger.withoutNumber(name.toLowerCase(Locale.ROOT)))
                .toList();
        boolean held = heldInChannel.getOrDefault(part.path(), false);
        for (Rule rule : RULES) {
            if ((held || !rule.inChannel()) && rule.matches().stream().anyMatch(word -> isNamed(names, word))) {
                return Optional.of(rule.why());
            }
        }
        return Optional.empty();
    }

    private static boolean isNamed(List<String> names, String word) {
        return word.equals("box")
                ? names.contains(word)
                : names.get(names.size() - 1).equals(word) && !names.contains("box");
    }
}
