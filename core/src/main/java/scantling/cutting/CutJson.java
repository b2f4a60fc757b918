package scantling.cutting;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import scantling.measure.Unit;

/**
 * Cut jobs and saw plans as JSON text, both described in {@code docs/cut-instances.md}. A job is:
 *
 * <pre>{@code
 * {"unit": "mm",
 *  "saw": {"kerf": 3.2, "trim": 10, "stages": 0, "firstCut": "any"},
 *  "keep": {"longer": 300, "shorter": 100},
 *  "sheets": [{"name": "ply", "length": 2440, "width": 1220, "count": null, "cost": 8000}],
 *  "parts": [{"name": "side", "length": 720, "width": 560, "count": 2, "turn": false}]}
 * }</pre>
 *
 * Instead of {@code sheets} there may be {@code boards} (also with {@code onHand}) or {@code sticks} (without width). Lengths
 * are numbers in the unit (mm, cm, m, in or ft), or text such as {@code "3/4 in"}.
 */
public final class CutJson {
    /** The library of JSON lets numbers of billions of digits through its own kind of problem. */
    private static final String TOO_LARGE =
            "A number in it is too large or too small to be read; give lengths in the job's unit.";

    private static final ObjectMapper MAPPER = new ObjectMapper()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS, DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private CutJson() {}

    /**
     * What was read: a job, or everything that is wrong with the text.
     *
     * @param job there if and only if there are no problems
     * @param problems in words for the maker, each with the place it is about
     * @param unit in which numbers without one are read, and in which the maker thinks
     */
    public record Reading(Optional<CutJob> job, List<String> problems, Unit unit) {
        public Reading {
            problems = List.copyOf(problems);
        }

        static Reading wrong(List<String> problems) {
            return new Reading(Optional.empty(), problems, Unit.MM);
        }
    }

    /** Reads a job. */
    public static Reading readJob(String text) {
        try {
            Reading read = new JobReader().read(MAPPER.readTree(text));
            return read.job().isPresent()
                    ? read
                    : Reading.wrong(JsonLines.of(text).before(read.problems()));
        } catch (JsonProcessingException e) {
            return Reading.wrong(List.of(broken(e)));
        } catch (NumberFormatException e) {
            return Reading.wrong(List.of(TOO_LARGE));
        }
    }

    private static String broken(JsonProcessingException e) {
        int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
        int column = e.getLocation() == null ? 0 : e.getLocation().getColumnNr();
        return "line %d, column %d: this is not JSON: look there, or just before, for a comma, quote or bracket too many or too few."
                .formatted(line, column);
    }

    /** Writes a job, in millimetres. */
    public static String writeJob(CutJob job) {
        return JsonWriter.job(job).toPrettyString();
    }

    /**
     * Writes a plan, in millimetres, with its job, so that it can be judged alone.
     *
     * @param seconds how long the search took; told by the caller, for there is no clock here
     */
    public static String writePlan(CutJob job, CutPlan plan, double seconds) {
        return JsonWriter.plan(job, plan, seconds).toPrettyString();
    }

    /**
     * A plan that was read back with its job.
     *
     * @param job what was planned; there if and only if there are no problems
     * @param plan how; likewise
     * @param problems what is wrong with the text, or with the plan
     */
    public record ReadPlan(Optional<CutJob> job, Optional<CutPlan> plan, List<String> problems) {
        public ReadPlan {
            problems = List.copyOf(problems);
        }
    }

    /** Reads a written plan back, its job with it, and has it judged by {@link SawCheck}. */
    public static ReadPlan readPlan(String text) {
        try {
            JsonNode tree = MAPPER.readTree(text);
            Reading reading = new JobReader().read(tree.path("job"));
            if (reading.job().isEmpty()) {
                return new ReadPlan(Optional.empty(), Optional.empty(), reading.problems());
            }
            CutJob job = reading.job().orElseThrow();
            PlanReader reader = new PlanReader(job);
            CutPlan plan = reader.read(tree);
            List<String> wrong = reader.problems().isEmpty() ? SawCheck.problems(job, plan) : reader.problems();
            return wrong.isEmpty()
                    ? new ReadPlan(Optional.of(job), Optional.of(plan), wrong)
                    : new ReadPlan(Optional.empty(), Optional.empty(), wrong);
        } catch (JsonProcessingException e) {
            return new ReadPlan(Optional.empty(), Optional.empty(), List.of(broken(e)));
        } catch (NumberFormatException e) {
            return new ReadPlan(Optional.empty(), Optional.empty(), List.of(TOO_LARGE));
        }
    }

    /** What is wrong with a written plan; empty for a sound one. */
    public static List<String> checkPlan(String text) {
        return readPlan(text).problems();
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static ArrayNode array() {
        return MAPPER.createArrayNode();
    }

    static Optional<Unit> unit(String symbol) {
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    static OptionalInt count(JsonNode node) {
        return node.isInt() ? OptionalInt.of(node.intValue()) : OptionalInt.empty();
    }
}
