package scantling.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.measure.LengthFormat;
import scantling.packet.JobLines;
import scantling.packet.JobSheetPage;
import scantling.packet.Packet;
import scantling.piece.PieceEditor;
import scantling.piece.Problem;
import scantling.plan.Plan;
import scantling.shop.Client;
import scantling.shop.Job;
import scantling.shop.JobPlan;
import scantling.shop.Recorded;
import scantling.shop.Revision;
import scantling.shop.ShopStore;

/** Makes job sheets and keeps the last few of each job, so that a page is sent only what changed since its own. */
final class Sheets {
    private static final int KEPT_OF_A_JOB = 6;
    private static final int JOBS = 24;
    private static final int SHOWN_REVISIONS = 12;
    private static final int SHOWN_ACTS = 12;
    private static final int LOOKED_AT = 200;
    /** Widths that only paper needs; a page may hold no style of its own. */
    private static final Pattern OF_PAPER = Pattern.compile(" style=\"width:\\d+%\"");

    private static final Pattern NOTE =
            Pattern.compile("(?s)(<div class=\"pencil [a-z]+\" id=\"note-([a-z]+)\">.*?)(<p class=\"src\">)");

    private final ShopStore store;
    private final Pages pages;
    private final UnaryOperator<Plan> bettered;
    private final String start;
    private final AtomicLong made = new AtomicLong();
    private final Map<String, Deque<Made>> kept = new LinkedHashMap<>(JOBS, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Made>> eldest) {
            return size() > JOBS;
        }
    };

    /** A sheet and what it was made from. */
    private record Made(Object from, Job job, Optional<String> client, Sheet sheet) {}

    /** @param bettered a plan with the best saw plans found for it so far @param start tells this server's sheets from others' */
    Sheets(ShopStore store, Pages pages, UnaryOperator<Plan> bettered, String start) {
        this.store = store;
        this.pages = pages;
        this.bettered = bettered;
        this.start = start;
    }

    /** Of a job as it stands. */
    Sheet of(JobPlan job, boolean inch) {
        Optional<Plan> plan = plan(job).map(bettered);
        Object from = plan.<Object>map(found -> found).orElse(job);
        Optional<String> client = client(store, job.job());
        String key = job.job().id() + (inch ? " in" : " mm");
        synchronized (kept) {
            Deque<Made> all = kept.computeIfAbsent(key, unused -> new ArrayDeque<>());
            Optional<Sheet> known = all.stream()
                    .filter(each -> isSame(each, from, job.job(), client))
                    .map(Made::sheet)
                    .findFirst();
            if (known.isPresent()) {
                return known.get();
            }
        }
        Sheet sheet = make(job, plan, inch);
        synchronized (kept) {
            Deque<Made> all = kept.computeIfAbsent(key, unused -> new ArrayDeque<>());
            all.addFirst(new Made(from, job.job(), client, sheet));
            while (all.size() > KEPT_OF_A_JOB) {
                all.removeLast();
            }
        }
        return sheet;
    }

    /** Plans are compared by being the very same: equal ones are never made twice while they are kept. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isSame(Made made, Object from, Job job, Optional<String> client) {
        return made.from() == from && made.job().equals(job) && made.client().equals(client);
    }

    /** A sheet that a page may still show. */
    Optional<Sheet> find(String job, boolean inch, String version) {
        synchronized (kept) {
            return kept.getOrDefault(job + (inch ? " in" : " mm"), new ArrayDeque<>()).stream()
                    .map(Made::sheet)
                    .filter(sheet -> sheet.version().equals(version))
                    .findFirst();
        }
    }

    private static Optional<Plan> plan(JobPlan job) {
        return job instanceof JobPlan.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    private Sheet make(JobPlan job, Optional<Plan> plan, boolean inch) {
        Map<String, String> strands = new LinkedHashMap<>();
        List<Problem> problems = problems(job);
        Optional<Plan> sound = plan.filter(found -> found.problems().isEmpty());
        if (sound.isPresent()) {
            Packet packet = Packet.of(sound.get(), format(inch), lines(store, job));
            Strands.of(JobSheetPage.body(packet.content())).forEach((id, strand) -> {
                strands.put(id, withWaysOut(job.job().id(), strand));
                if (id.equals("timber")) {
                    strands.put(
                            "saw", pages.render("saw", Map.of("job", job.job().id())));
                }
            });
        } else {
            strands.put(
                    Strands.TOP,
                    pages.render("troubled", Map.of("title", job.job().title(), "problems", problems)));
        }
        strands.put(
                "given",
                pages.render(
                        "given",
                        Map.of(
                                "job",
                                job.job().id(),
                                "givens",
                                PieceEditor.givens(job.revision().text(), Construction.language()))));
        strands.put("versions", pages.render("versions", versions(job)));
        String version = start + "-" + made.incrementAndGet();
        return new Sheet(version, sound, strands);
    }

    /** Under each finding, the way to what would clear it. */
    private static String withWaysOut(String job, String strand) {
        return NOTE.matcher(OF_PAPER.matcher(strand).replaceAll(""))
                .replaceAll(
                        "$1<p class=\"act\"><a href=\"/jobs/" + job + "/ways?note=$2\">What would clear it</a></p>$3");
    }

    static boolean canBeTakenBack(Recorded act) {
        return !act.words().startsWith("took back: ") && !act.words().startsWith("did again: ");
    }

    static LengthFormat format(boolean inch) {
        return inch ? LengthFormat.INCH : LengthFormat.MM;
    }

    /** Everything that keeps the piece from being built. */
    static List<Problem> problems(JobPlan job) {
        if (job instanceof JobPlan.Planned planned) {
            return planned.plan().problems();
        }
        return job instanceof JobPlan.Unreadable unreadable ? unreadable.problems() : List.of();
    }

    /** What papers and pages say of the job itself: for whom it is and when it is wanted. */
    static JobLines lines(ShopStore store, JobPlan job) {
        List<JobLines.Line> lines = new ArrayList<>();
        client(store, job.job()).ifPresent(name -> lines.add(new JobLines.Line("For", name)));
        job.job().due().ifPresent(day -> lines.add(new JobLines.Line("Wanted by", Days.written(day))));
        return new JobLines("", job.job().id(), lines);
    }

    /** For whom a job is done, where the shop knows. */
    static Optional<String> client(ShopStore store, Job job) {
        return store.clients().stream()
                .filter(client -> client.id().equals(job.client()))
                .map(Client::name)
                .findFirst();
    }

    private Map<String, Object> versions(JobPlan job) {
        String id = job.job().id();
        List<Revision> all = store.revisions(id);
        int from = Math.max(0, all.size() - SHOWN_REVISIONS);
        List<Recorded> acts = store.lastActs(LOOKED_AT).stream()
                .filter(act -> act.job().equals(id) && canBeTakenBack(act))
                .limit(SHOWN_ACTS)
                .toList();
        return Map.of(
                "job",
                id,
                "revisions",
                all.subList(from, all.size()),
                "current",
                job.revision().number(),
                "acts",
                acts);
    }
}
