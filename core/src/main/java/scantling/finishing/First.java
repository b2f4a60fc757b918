package scantling.finishing;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.timber.Table;

/** Which parts are better finished before assembly, and why; rules in {@code finishing/first.csv}. */
final class First {
    private static final Table TABLE = Table.read("finishing/first.csv");

    private final Map<String, Boolean> heldInChannel = new HashMap<>();

    First(Assembly assembly) {
        for (Joint joint : assembly.joints()) {
            boolean channel = joint.kind() == Joint.Kind.GROOVE || joint.kind() == Joint.Kind.RABBET;
            heldInChannel.merge(joint.entering(), channel, Boolean::logicalOr);
        }
    }

    /** Why a part is finished first; nothing when it can wait. Names of two words match names of which one is inside the other. */
    Optional<String> why(Part part) {
        List<String> names = Arrays.stream(part.path().split(" / ", -1))
                .map(name -> name.toLowerCase(Locale.ROOT).replaceAll("\\s*\\d+$", ""))
                .toList();
        for (Table.Row row : TABLE.rows()) {
            boolean named = row.list("matches").stream().anyMatch(word -> isNamed(names, word));
            boolean held = !row.text("rule").equals("back") || heldInChannel.getOrDefault(part.path(), false);
            if (named && held) {
                return Optional.of(row.text("why"));
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
