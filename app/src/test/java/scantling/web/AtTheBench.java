package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;

/** A shop with a wall shelf in hand, and what a bench page sends and is sent. */
abstract class AtTheBench extends AtTheDesk {
    static final String QUEUE = "0123456789abcdef";

    String job;

    @BeforeEach
    void begin() {
        job = shop.job("wall-shelf");
    }

    String send(String... acts) {
        HttpResponse<String> answer = desk.post(
                "/jobs/" + job + "/bench/acts",
                "{\"queue\":\"%s\",\"acts\":[%s]}".formatted(QUEUE, String.join(",", acts)),
                "X-Stamp",
                desk.stamp("/new"));
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body();
    }

    static String act(int number, String more) {
        return "{\"id\":\"act-number-%d\",\"n\":%d,%s}".formatted(number, number, more);
    }

    List<BenchEntry> log() {
        return shop.store.bench(job).stream().map(Logged::entry).toList();
    }

    String page() {
        return desk.get("/jobs/" + job + "/bench").body();
    }

    JobPlan.Planned planned() {
        return (JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow();
    }

    /** The cards' keys, in the order of the page. */
    List<String> cards() {
        Matcher card = Pattern.compile("data-card=\"([^\"]+ / [^\"]+)\"").matcher(page());
        return card.results().map(found -> found.group(1)).toList();
    }
}
