package scantling.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.cutting.Rest;

/** Reads where a maker is in a saw plan: {@code 2:7} for seven cuts made on stock number 2, {@code side:1} for one spoilt side. */
final class Where {
    private Where() {}

    static Rest.Progress read(List<String> made, List<String> spoilt) {
        Map<Integer, Integer> cuts = new LinkedHashMap<>();
        for (String text : made) {
            int colon = text.lastIndexOf(':');
            if (colon < 0) {
                throw new Failure("--made %s: say it as the number of the stock, a colon and how many cuts, as in 2:7."
                        .formatted(text));
            }
            cuts.put(
                    number(text.substring(0, colon), "--made", text),
                    number(text.substring(colon + 1), "--made", text));
        }
        Map<String, Integer> parts = new LinkedHashMap<>();
        for (String text : spoilt) {
            int colon = text.lastIndexOf(':');
            boolean counted = colon > 0 && text.substring(colon + 1).strip().matches("\\d+");
            parts.merge(
                    counted ? text.substring(0, colon) : text,
                    counted ? number(text.substring(colon + 1), "--spoilt", text) : 1,
                    Integer::sum);
        }
        return new Rest.Progress(cuts, parts);
    }

    private static int number(String digits, String option, String text) {
        try {
            return Integer.parseInt(digits.strip());
        } catch (NumberFormatException notOne) {
            throw new Failure("%s %s: (%s) is not a whole number.".formatted(option, text, digits.strip()));
        }
    }
}
