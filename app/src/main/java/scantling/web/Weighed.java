package scantling.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import scantling.plan.DesignChange;

/**
 * What a change would cost, and how to say yes to it.
 *
 * @param action where to send it once more
 * @param fields what was sent
 * @param lines the cost, in words
 */
public record Weighed(String action, Map<String, String> fields, List<String> lines) {
    /** The field that says yes. */
    static final String ACCEPT = "accept";

    /** Nothing waits for a yes. */
    static final Weighed NOTHING = new Weighed("", Map.of(), List.of());

    private static final Set<String> OWN = Set.of(Doors.STAMP, "act", "version", ACCEPT);
    private static final int HOUR = 60;

    /** Takes its own copies. */
    public Weighed {
        lines = List.copyOf(lines);
        fields = new LinkedHashMap<>(fields);
    }

    /** Whether a yes is asked for. */
    public boolean isAsked() {
        return !action.isEmpty();
    }

    /** Of what a request asks for. @param minutesADay how long a working day is */
    static Weighed of(Context ctx, DesignChange.Cost cost, double minutesADay) {
        Map<String, String> fields = new LinkedHashMap<>();
        ctx.formParamMap().forEach((name, values) -> {
            if (!OWN.contains(name) && !values.isEmpty()) {
                fields.put(name, values.get(0));
            }
        });
        return new Weighed(ctx.path(), fields, lines(cost, minutesADay));
    }

    /** Parts, money and days, a line each. */
    static List<String> lines(DesignChange.Cost cost, double minutesADay) {
        List<String> lines = new ArrayList<>();
        cost.parts().forEach(part -> lines.add(part.sentence()));
        if (cost.pieces() != 0) {
            lines.add(
                    "%d %s of stock to buy.".formatted(Math.abs(cost.pieces()), cost.pieces() > 0 ? "more" : "fewer"));
        }
        cost.money()
                .filter(money -> money != 0)
                .ifPresent(money -> lines.add("The wood costs %s %s."
                        .formatted(Prices.written(Math.abs(money)), money > 0 ? "more" : "less")));
        cost.minutes()
                .filter(minutes -> minutes > 0)
                .ifPresent(minutes -> lines.add("%s of bench time is lost: %s."
                        .formatted(time(minutes), days(cost.days(minutesADay).orElse(0.0)))));
        return lines;
    }

    private static String time(int minutes) {
        return minutes < HOUR ? minutes + " min" : "%d h %02d".formatted(minutes / HOUR, minutes % HOUR);
    }

    private static String days(double days) {
        return days < 0.05 ? "less than a tenth of a day" : String.format(Locale.ROOT, "%.1f days", days);
    }

    /** Whether a change to what is cut is worth a question. */
    static boolean isWorthAsking(DesignChange.Cost cost) {
        return !cost.sparesWhatIsCut()
                || cost.pieces() > 0
                || cost.money().filter(money -> money > 0).isPresent();
    }
}
