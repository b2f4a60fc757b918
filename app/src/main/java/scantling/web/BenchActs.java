package scantling.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Photo;
import scantling.shop.SawnAsPlanned;
import scantling.shop.SawnSoFar;
import scantling.shop.Sent;

/**
 * Acts that a bench page kept until they could be sent. They are taken one after the other; the first that is out of turn
 * ends it, and the page sends again from the one that is expected. An act that cannot be done is answered with why and
 * does not hold up the others.
 */
final class BenchActs {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MOST = 100;
    private static final int LONGEST = 2_000;

    private final Doorway doorway;
    private final Clock clock;

    BenchActs(Doorway doorway, Clock clock) {
        this.doorway = doorway;
        this.clock = clock;
    }

    /**
     * What became of one.
     *
     * @param id as the page named it
     * @param taken whether it need not be sent again
     * @param said why it could not be done; empty when it was
     * @param expected the number that should come next; 0 when this one was in turn
     */
    record Outcome(String id, boolean taken, String said, long expected) {}

    /** Takes all that can be taken. @param body the page's acts as JSON */
    List<Outcome> take(Context ctx, String job, boolean inch, byte[] body) {
        JsonNode sent = read(body);
        String queue = text(sent, "queue");
        JsonNode acts = sent.path("acts");
        if (!queue.matches("[a-z0-9]{8,40}") || !acts.isArray() || acts.size() > MOST) {
            throw new Refused(Refused.BAD, "These acts cannot be read.", "Load the page again.");
        }
        String device = Visitor.of(ctx).id() + " " + queue;
        List<Outcome> outcomes = new ArrayList<>();
        for (JsonNode act : acts) {
            Outcome outcome = one(job, device, act, inch, refusal(ctx, act, inch));
            outcomes.add(outcome);
            if (outcome.expected() > 0) {
                break;
            }
        }
        return outcomes;
    }

    private static JsonNode read(byte[] body) {
        try {
            return JSON.readTree(body);
        } catch (JsonProcessingException unreadable) {
            throw new Refused(Refused.BAD, "These acts cannot be read.", "Load the page again.");
        } catch (IOException neverFromBytes) {
            throw new IllegalStateException(neverFromBytes);
        }
    }

    private static String text(JsonNode node, String name) {
        String text = node.path(name).asText("");
        if (text.length() > LONGEST) {
            throw new Refused(
                    Refused.TOO_LARGE, "A text of %d characters is too long.".formatted(text.length()), "Shorten it.");
        }
        return text;
    }

    /** @param refusal why it cannot be; it is counted all the same, so that the next is in turn */
    private Outcome one(String job, String device, JsonNode sent, boolean inch, Optional<Refused> refusal) {
        String id = text(sent, "id");
        long number = sent.path("n").asLong(0);
        if (!id.matches("[A-Za-z0-9-]{8,60}") || number < 1) {
            return new Outcome(id, true, "This act has no name or number.", 0);
        }
        Act act = refusal.map(refused -> (Act) notUnderstood(job))
                .or(() -> takenBack(job, sent))
                .or(() -> entry(sent, inch).map(entry -> new Act.Log(job, entry)))
                .orElseGet(() -> notUnderstood(job));
        Outcome outcome = outcome(id, doorway.told(doorway.store().take(new Sent(id, device, number, act))));
        return refusal.filter(refused -> outcome.taken())
                .map(refused -> new Outcome(id, true, refused.sentence() + " " + refused.remedy(), 0))
                .orElse(outcome);
    }

    private static Act.Log notUnderstood(String job) {
        return new Act.Log(job, new BenchEntry.Minutes("not understood", -1));
    }

    /** A measured size with which the piece could not be built. */
    private Optional<Refused> refusal(Context ctx, JsonNode sent, boolean inch) {
        return text(sent, "kind").equals("measured") && doorway.job(ctx) instanceof JobPlan.Planned job
                ? size(text(sent, "size"), inch)
                        .flatMap(size -> WhatIf.refusal(doorway.store(), job, text(sent, "subject"), size))
                : Optional.empty();
    }

    /** Taking back something this job's bench said; what another job's bench said is not this page's to take back. */
    private Optional<Act> takenBack(String job, JsonNode sent) {
        String subject = text(sent, "subject");
        return text(sent, "kind").equals("takeback")
                        && doorway.store().bench(job).stream()
                                .anyMatch(logged -> logged.act().equals(subject))
                ? Optional.of(new Act.Undo(subject))
                : Optional.empty();
    }

    private static Outcome outcome(String id, Answer answer) {
        if (answer instanceof Answer.OutOfTurn turn) {
            return new Outcome(id, false, "", turn.expected());
        }
        return answer instanceof Answer.Refused refused
                ? new Outcome(id, true, (refused.sentence() + " " + refused.remedy()).strip(), 0)
                : new Outcome(id, true, "", 0);
    }

    private Optional<BenchEntry> entry(JsonNode sent, boolean inch) {
        String subject = text(sent, "subject");
        return switch (text(sent, "kind")) {
            case "done" -> Optional.of(new BenchEntry.Done(subject));
            case "undone" -> Optional.of(new BenchEntry.Undone(subject));
            case "cut" -> Optional.of(new BenchEntry.Cut(subject, Map.of()));
            case "spoilt" -> Optional.of(new BenchEntry.Spoilt(subject, text(sent, "text")));
            case "minutes" ->
                Optional.of(new BenchEntry.Minutes(subject, sent.path("minutes").asInt(-1)));
            case "wait" ->
                wait(subject, sent.path("minutes").asInt(-1), sent.path("ago").asLong(0));
            case "sawn" -> SawnAsPlanned.read(sent.path("sawn").asText("")).map(sawn -> sawn);
            case "partly" -> partly(sent);
            case "note" -> Optional.of(new BenchEntry.Note(subject, text(sent, "text"), photo(sent)));
            case "measured" -> size(text(sent, "size"), inch).map(size -> new BenchEntry.Measured(subject, size));
            default -> Optional.empty();
        };
    }

    /** A piece of stock that is sawn as far as it is. */
    private Optional<BenchEntry> partly(JsonNode sent) {
        List<String> spoilt = new ArrayList<>();
        sent.path("parts").forEach(part -> spoilt.add(part.asText()));
        return SawnSoFar.read(
                        sent.path("partly").asText(""),
                        sent.path("made").asInt(0),
                        spoilt,
                        doorway.store().rack())
                .map(sawn -> sawn);
    }

    /** @param ago for how many seconds it had run when the network let the act through */
    private Optional<BenchEntry> wait(String what, int minutes, long ago) {
        return minutes < 1 || minutes > Waits.MOST_MINUTES || what.isBlank()
                ? Optional.empty()
                : Optional.of(Waits.start(what, minutes, clock.instant().minusSeconds(Math.max(0, ago))));
    }

    private static Optional<Length> size(String said, boolean inch) {
        return LengthReader.read(said, inch ? Unit.INCH : Unit.MM).filter(Length::isPositive);
    }

    /** A photo is kept first; the note that names it comes after. What is no picture is left out. */
    private Optional<String> photo(JsonNode sent) {
        String coded = sent.path("photo").asText("");
        if (coded.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Photo.of(Base64.getDecoder().decode(coded)).map(doorway.store()::keep);
        } catch (IllegalArgumentException noBase64) {
            return Optional.empty();
        }
    }
}
