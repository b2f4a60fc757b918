package scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import scantling.stock.Rack;

/** What the file says, as values. Lives as long as one transaction. */
final class Shelves {
    private final Rows rows;

    Shelves(Rows rows) {
        this.rows = rows;
    }

    List<Client> clients() {
        return rows.all(ShopTable.CLIENT).stream().map(Records::client).toList();
    }

    List<Job> jobs() {
        return rows.all(ShopTable.JOB).stream().map(Records::job).toList();
    }

    Optional<Job> job(String id) {
        return rows.find(ShopTable.JOB, id).map(Records::job);
    }

    List<Revision> revisions(String job) {
        Map<Long, Row> acts = acts("SELECT act FROM revision WHERE job = ?", job);
        return rows.where(ShopTable.REVISION, "job = ?", job).stream()
                .map(row -> Records.revision(row, of(acts, row)))
                .toList();
    }

    Optional<Revision> revision(String job, int number) {
        return rows.where(ShopTable.REVISION, "job = ? AND number = ?", job, number).stream()
                .map(this::revision)
                .findFirst();
    }

    private Revision revision(Row row) {
        return Records.revision(row, act(row.number("act")));
    }

    /** The text that would count if an act were taken back, or done again. */
    Optional<Revision> turned(String act) {
        return findAct(act)
                .flatMap(found ->
                        rows
                                .where(
                                        ShopTable.CHANGE,
                                        "act = ? AND place = ?",
                                        found.number("seq"),
                                        ShopTable.JOB.word())
                                .stream()
                                .map(change -> Row.ofJson(
                                        found.number("undone_by") == 0 ? change.text("before") : change.text("after")))
                                .filter(job -> job.values().containsKey("revision"))
                                .findFirst()
                                .flatMap(job -> revision(found.text("job"), Math.toIntExact(job.number("revision")))));
    }

    private Row act(long seq) {
        return rows.where(ShopTable.ACT, "seq = ?", seq).get(0);
    }

    List<OnHand> onHand() {
        return rows.where(ShopTable.RACK, "1 = 1").stream()
                .sorted(Comparator.comparingLong(row -> row.number("nr")))
                .map(RackRows::onHand)
                .toList();
    }

    Rack rack() {
        return new Rack(onHand().stream().map(OnHand::stock).toList());
    }

    List<Supply> supplies() {
        return rows.all(ShopTable.SUPPLY).stream().map(Records::supply).toList();
    }

    ShopSettings settings() {
        return new ShopSettings(
                rows.all(ShopTable.SETTING).stream().map(Records::setting).toList());
    }

    /** Everything the bench ever said of a job, in order. */
    List<Logged> bench(String job) {
        Map<Long, Row> acts = acts("SELECT act FROM bench WHERE job = ?", job);
        List<Logged> log = new ArrayList<>();
        for (Row row : rows.where(ShopTable.BENCH, "job = ?", job)) {
            log.add(Records.logged(row, of(acts, row)));
        }
        return log;
    }

    /** Acts by number, all in one question. @param which asks for their numbers */
    private Map<Long, Row> acts(String which, String job) {
        Map<Long, Row> acts = new HashMap<>();
        rows.where(ShopTable.ACT, "seq IN (%s)".formatted(which), job).forEach(act -> acts.put(act.number("seq"), act));
        return acts;
    }

    private static Row of(Map<Long, Row> acts, Row row) {
        return Optional.ofNullable(acts.get(row.number("act")))
                .orElseThrow(() -> new IllegalArgumentException("A row has no act (%d).".formatted(row.number("act"))));
    }

    /** The number of the last act that was more than a note. */
    long lastWork() {
        return rows.number(
                "SELECT coalesce((SELECT seq FROM act WHERE kind <> ? ORDER BY seq DESC LIMIT 1), 0)", "note");
    }

    /** The number of the last act on a job; none for one that was never acted on. */
    long lastActOf(String job) {
        return rows.number("SELECT coalesce(max(seq), 0) FROM act WHERE job = ?", job);
    }

    Optional<Row> findAct(String id) {
        return rows.where(ShopTable.ACT, "id = ?", id).stream().findFirst();
    }

    List<Recorded> lastActs(int most) {
        return rows
                .where(ShopTable.ACT, "refused = '' AND seq > (SELECT coalesce(max(seq), 0) FROM act) - ?", most)
                .stream()
                .map(Records::recorded)
                .sorted(Comparator.comparingLong(Recorded::seq).reversed())
                .toList();
    }

    long version() {
        return rows.number("SELECT coalesce(max(seq), 0) FROM act");
    }

    /** What a job's plan is worked out from, all of one moment. @param bench what the bench said of it */
    Optional<JobInputs> inputs(String job, Supplier<List<Logged>> bench) {
        return job(job).map(found -> new JobInputs(
                found,
                revision(job, found.revision()).orElseThrow(),
                bench.get().stream().filter(Logged::inForce).map(Logged::entry).toList(),
                settings(),
                rack()));
    }
}
