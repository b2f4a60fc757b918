package scantling.bench.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.shop.BenchEntry;
import scantling.shop.Job;
import scantling.shop.Recorded;
import scantling.shop.ShopStore;

/** Looks into a shop that was killed: is everything there that was answered, is nothing there by halves, is the file sound. */
final class Ledgered {
    private final Path data;
    private final List<String> faults = new ArrayList<>();

    Ledgered(Path data) {
        this.data = data;
    }

    /** Everything that is wrong, in words. @param lost counts answered acts that are not there */
    List<String> compare(List<Writer> writers, long[] lost) {
        sound(data.resolve(ShopStore.FILE));
        backups();
        try (ShopStore store = ShopStore.open(data)) {
            Set<String> journal =
                    store.lastActs(Integer.MAX_VALUE).stream().map(Recorded::id).collect(Collectors.toSet());
            Set<String> effects = effects(store);
            for (Writer writer : writers) {
                compare(writer, journal, effects, lost);
            }
        }
        return faults;
    }

    private void compare(Writer writer, Set<String> journal, Set<String> effects, long[] lost) {
        for (Writer.Wrote act : writer.answered()) {
            if (!journal.contains(act.id())) {
                lost[0]++;
                faults.add("answered and lost: " + act.id());
            }
            halves(act, journal, effects);
        }
        for (Writer.Wrote act : writer.refused()) {
            if (journal.contains(act.id())) {
                faults.add("refused and there all the same: " + act.id());
            }
        }
        writer.pending().ifPresent(act -> halves(act, journal, effects));
    }

    /** An act of the journal without what it did, or the other way round. Sizes have no words of their own. */
    private void halves(Writer.Wrote act, Set<String> journal, Set<String> effects) {
        if (!act.kind().equals("size") && journal.contains(act.id()) != effects.contains(act.words())) {
            faults.add("half done: " + act.id());
        }
    }

    private static Set<String> effects(ShopStore store) {
        Set<String> words = new HashSet<>();
        for (Job job : store.jobs()) {
            words.add(job.title());
        }
        store.jobs().stream()
                .flatMap(job -> store.bench(job.id()).stream())
                .map(logged -> logged.entry())
                .filter(BenchEntry.Note.class::isInstance)
                .map(entry -> ((BenchEntry.Note) entry).text())
                .forEach(words::add);
        return words;
    }

    /** What goes by the name of a back-up is whole. */
    private void backups() {
        Path folder = data.resolve("back-ups");
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(file -> file.toString().endsWith(".scantling")).forEach(this::sound);
            } catch (IOException unreadable) {
                faults.add("the back-ups cannot be read: " + unreadable.getMessage());
            }
        }
    }

    private void sound(Path file) {
        try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement ask = open.createStatement();
                ResultSet said = ask.executeQuery("PRAGMA integrity_check")) {
            String first = said.next() ? said.getString(1) : "nothing";
            if (!first.equals("ok")) {
                faults.add(file + " is not sound: " + first);
            }
        } catch (SQLException unreadable) {
            faults.add("the file cannot be read: " + unreadable.getMessage());
        }
    }
}
