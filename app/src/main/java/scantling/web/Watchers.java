package scantling.web;

import io.javalin.http.sse.SseClient;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

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

    private final ScheduledExecutorService pulse = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "pulse of pages");
        thread.setDaemon(true);
        return thread;
    });
    private final Consumer<String> nobody;

    /**
     * @param nobody hears of a job when the last page that looked at it is gone
     * @param pulse milliseconds after which each page is tried again, whether it is still there
     */
    Watchers(Consumer<String> nobody, long pulse) {
        this.nobody = nobody;
        this.pulse.scheduleWithFixedDelay(this::feel, pulse, pulse, TimeUnit.MILLISECONDS);
    }

    /** That a page is gone is noticed only when something is sent to it; a comment means nothing to a page. */
    private void feel() {
        all.values()
                .forEach(ofJob -> ofJob.forEach(watcher -> {
                    if (watcher.client().terminated()) {
                        watcher.client().close();
                    } else {
                        watcher.client().sendComment("");
                    }
                }));
    }

    private void gone(String job, Queue<Watcher> ofJob, Watcher watcher) {
        if (ofJob.remove(watcher) && ofJob.isEmpty()) {
            nobody.accept(job);
        }
    }

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
        client.onClose(() -> gone(job, ofJob, watcher));
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
        pulse.shutdownNow();
        teller.shutdownNow();
        all.values().forEach(ofJob -> ofJob.forEach(watcher -> watcher.client().close()));
    }
}
