package scantling.shop;

import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Asks every hour, beginning soon after the shop was opened, whether a back-up is due. */
final class BackupSchedule implements AutoCloseable {
    private static final long FIRST_SECONDS = 5;
    private static final long EVERY_SECONDS = 3_600;
    private static final long LONGEST_SECONDS = 30;

    private final ScheduledExecutorService hand = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "back-ups");
        thread.setDaemon(true);
        return thread;
    });
    private volatile Optional<ShopTrouble> trouble = Optional.empty();
    private final Runnable backUp;

    BackupSchedule(Runnable backUp) {
        this.backUp = backUp;
        hand.scheduleWithFixedDelay(this::run, FIRST_SECONDS, EVERY_SECONDS, TimeUnit.SECONDS);
    }

    /** A back-up that fails is told to the maker and tried again an hour later. */
    void run() {
        try {
            backUp.run();
            trouble = Optional.empty();
        } catch (ShopTrouble failed) {
            trouble = Optional.of(failed);
        }
    }

    Optional<ShopTrouble> trouble() {
        return trouble;
    }

    /** Lets a copy that has begun come to its end. */
    @Override
    public void close() {
        hand.shutdown();
        try {
            if (!hand.awaitTermination(LONGEST_SECONDS, TimeUnit.SECONDS)) {
                hand.shutdownNow();
            }
        } catch (InterruptedException hurried) {
            hand.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
