package scantling.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import scantling.construct.Construction;
import scantling.measure.LengthFormat;
import scantling.packet.JobLines;
import scantling.packet.JobSheetPage;
import scantling.packet.Packet;
import scantling.piece.PieceEditor;
import scantling.piece.Problem;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.shop.Client;
import scantling.shop.Job;
import scantling.shop.JobPlan;
import scantling.shop.Kept;
import scantling.shop.Recorded;
import scantling.shop.Revision;
import scantling.shop.ShopStore;

/** Makes job sheets and remembers those that pages may still show, so that a page is sent only what changed since its own. */
final class Sheets {
    /** Characters of sheets that are kept: about a dozen of a bedside chest. */
    private static final long ROOM = 12_000_000;

    private static final int PAST_OF_A_JOB = 24;
    private static final int JOBS = 48;
    private static final int SHOWN_REVISIONS = 12;
    private static final int SHOWN_ACTS = 12;
    private static final int LOOKED_AT = 200;
    /** What other saw plans for the same plan change, and what only tells what was done. */
    private static final Set<String> NO_NEWS = Set.of("timber", "buying", "saw", "versions");

    private final ShopStore store;
    private final Pages pages;
    private final Function<Plan, List<CutGroup>> cuts;
    private final String start;
    private final AtomicLong made = new AtomicLong();
    private final Kept<Of, Map<String, Strand>> drawn = new Kept<>(ROOM, Sheets::length);
    private final Kept<Seen, Sheet> sheets = new Kept<>(ROOM, sheet -> length(sheet.strands()));
    private final Map<String, Deque<Sheet.Past>> past = new LinkedHashMap<>(JOBS, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Sheet.Past>> eldest) {
            return size() > JOBS;
        }
    };

    /** What the strands of a plan are drawn from: that very plan, and those very saw plans. */
    private record Of(Very plan, Very cuts, Job job, Optional<String> client, boolean inch) {}

    /** What a whole sheet is made from. @param lastAct of the job */
    private record Seen(Of of, int revision, long lastAct) {}

    /** @param cuts the best saw plans found for a plan so far @param start tells this server's sheets from others' */
    Sheets(ShopStore store, Pages pages, Function<Plan, List<CutGroup>> cuts, String start) {
        this.store = store;
        this.pages = pages;
        this.cuts = cuts;
        this.start = start;
    }

    /** Of a job as it stands. */
    Sheet of(JobPlan job, boolean inch) {
        Optional<Plan> plan = plan(job);
        Optional<List<CutGroup>> best = plan.map(cuts);
        Of of = new Of(
                // a text that does not read is told by its problems
                new Very(plan.<Object>map(found -> found).orElse(job.revision().text())),
                new Very(best.orElse(List.of())),
                job.job(),
                client(store, job.job()),
                inch);
        Seen seen =
                new Seen(of, job.revision().number(), store.lastActOf(job.job().id()));
        return sheets.get(seen, () -> {
            Optional<Plan> shown = plan.flatMap(found -> best.map(found::withCuts));
            return remembered(make(job, shown, of), key(job.job().id(), inch));
        });
    }

    private static String key(String job, boolean inch) {
        return job + (inch ? " in" : " mm");
    }

    private Sheet remembered(Sheet sheet, String key) {
        synchronized (past) {
            Deque<Sheet.Past> all = past.computeIfAbsent(key, unused -> new ArrayDeque<>());
            all.addFirst(sheet.past());
            while (all.size() > PAST_OF_A_JOB) {
                all.removeLast();
            }
        }
        return sheet;
    }

    /** A sheet that a page may still show. */
    Optional<Sheet.Past> find(String job, boolean inch, String version) {
        synchronized (past) {
            return past.getOrDefault(key(job, inch), new ArrayDeque<>()).stream()
                    .filter(sheet -> sheet.version().equals(version))
                    .findFirst();
        }
    }

    /** Whether somebody who looks at an older sheet must be told that something changed. */
    boolean isNews(JobPlan job, boolean inch, String version) {
        Sheet now = of(job, inch);
        return find(job.job().id(), inch, version)
                .filter(now::sameStrands)
                .map(old -> !NO_NEWS.containsAll(now.since(old).keySet()))
                .orElse(true);
    }

    /** Whether a page's sheet was made before this server was started. */
    boolean isOfAnEarlierStart(String version) {
        return !version.startsWith(start);
    }

    private static Optional<Plan> plan(JobPlan job) {
        return job instanceof JobPlan.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    private Sheet make(JobPlan job, Optional<Plan> plan, Of of) {
        Optional<Plan> sound = plan.filter(found -> found.problems().isEmpty());
        Map<String, Strand> strands = new LinkedHashMap<>(drawn.get(of, () -> drawn(job, sound, of.inch())));
        Map<String, Object> given = Map.of(
                "job",
                job.job().id(),
                "givens",
                PieceEditor.givens(job.revision().text(), Construction.language()));
        strands.put("given", Strand.of(pages.render("given", given)));
        strands.put("versions", Strand.of(pages.render("versions", versions(job))));
        return new Sheet(start + "-" + made.incrementAndGet(), strands);
    }

    private Map<String, Strand> drawn(JobPlan job, Optional<Plan> sound, boolean inch) {
        Map<String, Strand> strands = new LinkedHashMap<>();
        if (sound.isEmpty()) {
            Map<String, Object> trouble = Map.of(
                    "title",
                    job.job().title(),
                    "job",
                    job.job().id(),
                    "problems",
                    problems(job),
                    "sizes",
                    job instanceof JobPlan.Planned planned
                            ? BenchSizes.of(planned, store.bench(job.job().id()), format(inch))
                            : List.of());
            strands.put(Strands.TOP, Strand.of(pages.render("troubled", trouble)));
            return strands;
        }
        String id = job.job().id();
        Packet packet = Packet.of(sound.get(), format(inch), lines(store, job));
        Strands.of(JobSheetPage.body(packet.content())).forEach((name, strand) -> {
            strands.put(name, Strand.of(Strands.onPage(id, strand)));
            if (name.equals("timber")) {
                strands.put("saw", Strand.of(pages.render("saw", Map.of("job", id))));
            }
        });
        return strands;
    }

    private static long length(Map<String, Strand> strands) {
        return strands.values().stream()
                .mapToLong(strand -> strand.markup().length())
                .sum();
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
