package scantling.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Finding;
import scantling.measure.LengthFormat;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.days.Agenda;
import scantling.shop.Job;
import scantling.shop.JobPlan;
import scantling.shop.OnHand;
import scantling.shop.Progress;
import scantling.shop.ShopDays;
import scantling.shop.ShopStore;
import scantling.stock.Offcut;

/**
 * The shop at a glance.
 *
 * @param today in full
 * @param brief how many jobs, what waits
 * @param day on which the next work is: today, or the day in words
 * @param work what is to be done on the first day that has anything to do
 * @param jobs in hand, those promised soonest first
 * @param waits running
 * @param buy what the jobs in hand need and the shop has not
 * @param rack what lies there, by material
 * @param stops findings that say not to cut, over all jobs
 * @param away jobs that are finished or put away
 */
public record HomeView(
        String today,
        String brief,
        String day,
        List<TodayLine> work,
        List<JobLine> jobs,
        List<WaitLine> waits,
        List<BuyLine> buy,
        List<RackGroup> rack,
        List<StopLine> stops,
        List<Job> away) {
    /**
     * A job.
     *
     * @param id for its address
     * @param title what it is
     * @param of its materials, and for whom
     * @param due when it is wanted; empty when nobody said
     * @param cut how many parts are cut
     * @param parts how many there are; none when the text cannot be built
     * @param next what is to be done next, in words
     */
    public record JobLine(String id, String title, String of, String due, int cut, int parts, String next) {
        /** How much of it is cut, in percent. */
        public int percent() {
            return parts == 0 ? 0 : 100 * cut / parts;
        }
    }

    /** A wait that runs. @param what waits @param job for which @param begun epoch seconds @param ends epoch seconds */
    public record WaitLine(String what, String job, long begun, long ends, String left, int percent) {}

    /** Something to buy. @param what it is @param count how much @param jobs for which */
    public record BuyLine(String what, String count, String jobs) {}

    /** Stock of one material. @param material what @param pieces each in words */
    public record RackGroup(String material, List<String> pieces) {}

    /** A finding that says not to cut. @param job its id @param title its name @param sentence what is so */
    public record StopLine(String job, String title, String sentence) {}

    /** Makes it from the store. */
    record Maker(ShopStore store, ShopDays days) {
        HomeView of(LocalDate today, Instant now, LengthFormat format) {
            List<Job> all = store.jobs();
            List<JobPlan> plans = HomePages.inHand(all).stream()
                    .flatMap(job -> store.jobBook().planOf(job.id()).stream())
                    .toList();
            List<WaitLine> waits = plans.stream()
                    .flatMap(plan -> Waits.shown(store.bench(plan.job().id()), now).stream()
                            .map(wait -> wait.line(plan.job().title(), now)))
                    .toList();
            return new HomeView(
                    Days.inFull(today),
                    brief(plans.size(), waits.size()),
                    day(today, days.today()),
                    TodayLine.of(all, days.today()),
                    plans.stream().map(this::line).toList(),
                    waits,
                    ToBuy.of(store, plans),
                    rack(format),
                    plans.stream().flatMap(Maker::stops).toList(),
                    all.stream().filter(job -> job.state() != Job.State.IN_HAND).toList());
        }

        static String day(LocalDate today, List<Agenda.Entry> work) {
            return work.stream()
                    .map(entry -> entry.from().toLocalDate())
                    .findFirst()
                    .filter(day -> !day.equals(today))
                    .map(Days::inFull)
                    .orElse("Today");
        }

        private static String brief(int jobs, int waits) {
            String many = jobs == 0 ? "No job in hand." : jobs == 1 ? "One job in hand." : jobs + " jobs in hand.";
            String wait = waits == 0 ? "" : waits == 1 ? " One wait running." : " " + waits + " waits running.";
            return many + wait;
        }

        private JobLine line(JobPlan plan) {
            Job job = plan.job();
            String due = job.due().map(Days::written).orElse("");
            if (!(plan instanceof JobPlan.Planned planned)
                    || !planned.plan().problems().isEmpty()) {
                return new JobLine(job.id(), job.title(), "", due, 0, 0, "its text is to be put right");
            }
            Plan built = planned.plan();
            int parts = built.assembly().parts().size();
            int cut = planned.bench().cut().size();
            String of = built.assembly().piece().materials().values().stream()
                    .map(material -> material.of())
                    .distinct()
                    .collect(Collectors.joining(", "));
            String whom = Sheets.client(store, job)
                    .or(() -> built.assembly().piece().client())
                    .map(client -> ", for " + client)
                    .orElse("");
            Progress progress = Progress.of(built, store.bench(job.id()));
            return new JobLine(job.id(), job.title(), of + whom, due, cut, parts, next(built, progress));
        }

        private static String next(Plan plan, Progress progress) {
            if (plan.hasStop()) {
                return "a finding says stop";
            }
            return plan.route().operations().stream()
                    .filter(operation -> !progress.isDone(operation))
                    .map(Operation::title)
                    .findFirst()
                    .map(title -> "next: " + title)
                    .orElse("all of it is done");
        }

        private static Stream<StopLine> stops(JobPlan plan) {
            return plan instanceof JobPlan.Planned planned
                    ? planned.plan().findings().stream()
                            .filter(finding -> finding.severity() == Finding.Severity.STOP)
                            .map(finding ->
                                    new StopLine(plan.job().id(), plan.job().title(), finding.sentence()))
                    : Stream.empty();
        }

        private List<RackGroup> rack(LengthFormat format) {
            Map<String, List<String>> groups = new LinkedHashMap<>();
            for (OnHand piece : store.onHand()) {
                groups.computeIfAbsent(piece.stock().material(), unused -> new ArrayList<>())
                        .add(told(piece, format));
            }
            return groups.entrySet().stream()
                    .map(group -> new RackGroup(group.getKey(), group.getValue()))
                    .toList();
        }

        private static String told(OnHand piece, LengthFormat format) {
            String kind = piece.stock() instanceof Offcut
                    ? "offcut"
                    : piece.stock().getClass().getSimpleName().toLowerCase(Locale.ROOT);
            String size = Nominal.of(piece.stock().length(), format.inches()) + " × "
                    + Nominal.of(piece.stock().width(), format.inches()) + " × "
                    + Nominal.of(piece.stock().thickness(), format.inches());
            String place = Optional.of(piece.place())
                    .filter(said -> !said.isEmpty())
                    .map(said -> ", " + said)
                    .orElse("");
            return "%s %s, %s%s".formatted(kind, piece.stock().id(), size, place);
        }
    }
}
