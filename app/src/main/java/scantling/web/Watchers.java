package scantling.web;

import io.javalin.http.sse.SseClient;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Pages that are looked at and want to hear what changes elsewhere. A change is told once to all pages of its job. */
final class Watchers implements AutoCloseable {
    private static final int MOST_OF_A_JOB = 60;
    /** A long telling of one job does not hold up the others. */
    private static final int TELLERS = 2;

    private final Map<String, Queue<Watcher>> all = new ConcurrentHashMap<>();
    private final Set<String> news = ConcurrentHashMap.newKeySet();
    private final ExecutorService teller = Executors.newFixedThreadPool(TELLERS, task -> {
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

    /** Something of a job has changed; several changes on each other's heels may be told at once. */
    void changed(String job) {
        if (all.containsKey(job) && !teller.isShutdown() && news.add(job)) {
            teller.execute(() -> {
                news.remove(job);
                tell(job);
            });
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
