package scantling.web;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.measure.Ledger;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.route.days.Agenda;
import scantling.shop.Job;

/**
 * One thing to do today.
 *
 * @param href to its card
 * @param from when it begins
 * @param title what it is
 * @param job for which
 * @param minutes of hands, likely
 * @param why now
 */
public record TodayLine(String href, String from, String title, String job, int minutes, String why) {
    static List<TodayLine> of(List<Job> jobs, List<Agenda.Entry> entries) {
        Map<String, String> titles = jobs.stream().collect(Collectors.toMap(Job::id, Job::title));
        return entries.stream()
                .map(entry -> new TodayLine(
                        "/jobs/%s/bench#%s".formatted(entry.job(), Requests.coded(card(entry.operation()))),
                        Days.hour(entry.from()),
                        entry.operation().title(),
                        titles.getOrDefault(entry.job(), entry.job()),
                        (int) Math.ceil(entry.operation().hands().likely()),
                        entry.why()))
                .toList();
    }

    /** Ripping stands on the cards of the boards, under crosscutting. */
    private static String card(Operation operation) {
        return operation.step() == Step.RIP
                ? operation.id().replace(Step.RIP.words() + Ledger.SEPARATOR, Step.CROSSCUT.words() + Ledger.SEPARATOR)
                : operation.id();
    }
}
