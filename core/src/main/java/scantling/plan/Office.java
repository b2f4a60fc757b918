package scantling.plan;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Length;
import scantling.piece.Conditions;
import scantling.piece.FinishText;
import scantling.piece.Workshop;
import scantling.pricing.Rates;
import scantling.route.Times;
import scantling.route.days.UsualHours;

/**
 * What a shop charges, when it works, how long its work takes, and where its pieces go.
 *
 * @param rates what it charges
 * @param calendar when it works and what it has only so much of
 * @param times time standards, moved by its own log
 * @param home the air that pieces go to where their own text says nothing
 * @param coats coats of its own
 * @param tools its own tools, by the width of their cut
 */
public record Office(
        Rates rates,
        Workshop calendar,
        Times times,
        Optional<Conditions.Home> home,
        List<FinishText.Own> coats,
        Map<String, Length> tools) {
    /** Takes its own copies. */
    public Office {
        coats = List.copyOf(coats);
        tools = Map.copyOf(tools);
    }

    /** Rates of the example shop, usual hours, the standards alone. */
    public static Office usual() {
        return new Office(
                Rates.example(),
                UsualHours.in(ZoneOffset.UTC),
                Times.standard(),
                Optional.empty(),
                List.of(),
                Map.of());
    }

    /** The same at other rates. */
    public Office at(Rates other) {
        return new Office(other, calendar, times, home, coats, tools);
    }

    /** The same with times that a log has taught. */
    public Office taught(Times learned) {
        return new Office(rates, calendar, learned, home, coats, tools);
    }
}
