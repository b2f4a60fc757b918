package scantling.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Problem;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;

/** Every size from the bench that counts, each with the way to take it back: one of them may be what no piece can have. */
public final class BenchSizes {
    private static final String RECKONED = "It is reckoned with.";

    private BenchSizes() {}

    /**
     * One size, or those of a part that is cut.
     *
     * @param name of the number or part
     * @param size as measured
     * @param said whether it is used, and if not, why
     * @param way the last word of the address that takes it back
     * @param field what is sent there
     * @param value of that field
     */
    public record Line(String name, String size, String said, String way, String field, String value) {}

    /** Of a job, what was said last first. @param log of its bench */
    static List<Line> of(JobPlan.Planned job, List<Logged> log, LengthFormat format) {
        Set<String> open = new LinkedHashSet<>();
        job.bench().measured().stream().map(BenchLog.Measured::path).forEach(open::add);
        job.bench().cut().stream().map(BenchLog.Cut::path).forEach(open::add);
        List<Logged> lastFirst = new ArrayList<>(log);
        Collections.reverse(lastFirst);
        List<Line> lines = new ArrayList<>();
        for (Logged logged : lastFirst) {
            BenchEntry entry = logged.entry();
            boolean tells = entry instanceof BenchEntry.Measured || entry instanceof BenchEntry.Cut;
            if (logged.inForce() && tells && open.remove(entry.subject())) {
                lines.add(line(job, logged, format));
            }
        }
        return lines;
    }

    private static Line line(JobPlan.Planned job, Logged logged, LengthFormat format) {
        String name = logged.entry().subject();
        String said = job.benchProblems().stream()
                .map(Problem::message)
                .filter(message -> message.startsWith(name + ": ")
                        || message.startsWith(name + " / ")
                        || message.contains("\"" + name + "\""))
                .findFirst()
                .orElse(RECKONED);
        if (logged.entry() instanceof BenchEntry.Measured measured) {
            return new Line(name, format.formatWithUnit(measured.size()), said, "unmeasured", "name", name);
        }
        String sizes = ((BenchEntry.Cut) logged.entry())
                .sizes().entrySet().stream()
                        .map(size -> size.getKey() + " " + format.formatWithUnit(size.getValue()))
                        .sorted()
                        .collect(Collectors.joining(", "));
        return new Line(name, "cut: " + sizes, said, "undo", "of", logged.act());
    }
}
