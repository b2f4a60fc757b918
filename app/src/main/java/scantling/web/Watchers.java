package scantling.web;

import io.javalin.http.sse.SseClient;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Pages that are looked at and want to hear what changes elsewhere. A change is told once to all pages of its job. */
final class Watchers implements AutoCloseable {
    /** Whoever made the change has its answer before this is over, and need not be told. */
    private static final long PAUSE_MILLIS = 300;

    private static final int MOST_OF_A_JOB = 60;

    private final Map<String, Queue<Watcher>> all = new ConcurrentHashMap<>();
    private final ScheduledExecutorService teller = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "telling pages");
        thread.setDaemon(true);
        return thread;
    });

    /** One page. @param client its connection @param tell sends it what it lacks */
    private record Watcher(SseClient client, Runnable tell) {}

    /** A page begins to listen. @param tell sends it what it lacks, when something has changed */
    void add(String job, SseClient client, Runnable tell) {
        Queue<Watcher> ofJob = all.computeIfAbsent(job, unused -> new ConcurrentLinkedQueue<>());
        if (ofJob.size() >= MOST_OF_A_JOB) {
            client.close();
            return;
        }
        Watcher watcher = new Watcher(client, tell);
        ofJob.add(watcher);
        client.onClose(() -> ofJob.remove(watcher));
        client.keepAlive();
    }

    /** Something of a job has changed. */
    void changed(String job) {
        if (all.containsKey(job) && !teller.isShutdown()) {
            teller.schedule(() -> tell(job), PAUSE_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    private void tell(String job) {
        for (Watcher watcher : all.getOrDefault(job, new ConcurrentLinkedQueue<>())) {
            if (watcher.client().terminated()) {
                watcher.client().close();
            } else {
                watcher.tell().run();
            }
        }
    }

    /** Says one line to all pages of a job. */
    void say(String job, String event, String line) {
        all.getOrDefault(job, new ConcurrentLinkedQueue<>())
                .forEach(watcher -> watcher.client().sendEvent(event, line));
    }

    @Override
    public void close() {
        teller.shutdownNow();
        all.values().forEach(ofJob -> ofJob.forEach(watcher -> watcher.client().close()));
    }
}
