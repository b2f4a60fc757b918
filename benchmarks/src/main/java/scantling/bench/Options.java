package scantling.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code --name value} pairs of a command line. */
record Options(Map<String, String> values) {
    static Options of(String[] args, List<String> known) {
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < args.length; i += 2) {
            String name = args[i].startsWith("--") ? args[i].substring(2) : args[i];
            if (!known.contains(name) || i + 1 == args.length) {
                throw new IllegalArgumentException(
                        "(%s): say one of %s, each followed by its value.".formatted(args[i], known));
            }
            values.put(name, args[i + 1]);
        }
        return new Options(values);
    }

    String text(String name, String otherwise) {
        return values.getOrDefault(name, otherwise);
    }

    double number(String name, double otherwise) {
        return values.containsKey(name) ? Double.parseDouble(text(name, "")) : otherwise;
    }

    int whole(String name, int otherwise) {
        return values.containsKey(name) ? Integer.parseInt(text(name, "")) : otherwise;
    }
}
