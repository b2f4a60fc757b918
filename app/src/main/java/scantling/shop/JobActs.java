package scantling.shop;

import java.util.Optional;
import java.util.function.Predicate;
import scantling.piece.ReadResult;

/** Acts on jobs, their texts and clients. */
final class JobActs {
    private static final int LONGEST = 200;
    private static final int LONGEST_NOTE = 20_000;

    private final Changes changes;
    private final Shelves shelves;

    JobActs(Changes changes, Shelves shelves) {
        this.changes = changes;
        this.shelves = shelves;
    }

    Effect add(Act.AddJob asked) {
        checkTitle(asked.title());
        checkClient(asked.client());
        checkText(asked.text());
        String id = free(Words.slug(asked.title(), "job"), name -> hasJob(name));
        Job job = new Job(id, asked.title(), asked.client(), asked.due(), Optional.empty(), Job.State.IN_HAND, 1);
        changes.put(ShopTable.JOB, Records.row(job));
        write(id, 1, asked.text());
        return new Effect("add job", "new job: " + asked.title(), id, id);
    }

    /** A name that any job ever had is not given again: its texts are still there. */
    private boolean hasJob(String id) {
        return changes.rows().number("SELECT count(*) FROM revision WHERE job = ?", id) > 0;
    }

    private static String free(String wanted, Predicate<String> taken) {
        String name = wanted;
        for (int n = 2; taken.test(name); n++) {
            name = wanted + "-" + n;
        }
        return name;
    }

    Effect change(Job asked) {
        Job now = job(asked.id());
        checkTitle(asked.title());
        checkClient(asked.client());
        changes.put(ShopTable.JOB, Records.row(asked.at(now.revision())));
        String words = asked.state() == now.state()
                ? "changed the job " + asked.title()
                : "%s is %s".formatted(asked.title(), asked.state().word());
        return new Effect("change job", words, now.id(), now.id());
    }

    Effect edit(Act.EditText asked) {
        Job now = job(asked.job());
        if (asked.onRevision() != now.revision()) {
            throw stale(asked, now);
        }
        checkText(asked.text());
        int number =
                Math.toIntExact(changes.rows().number("SELECT max(number) + 1 FROM revision WHERE job = ?", now.id()));
        changes.put(ShopTable.JOB, Records.row(now.at(number)));
        write(now.id(), number, asked.text());
        String words = asked.words().isBlank() ? "changed the text" : shortened(asked.words());
        return new Effect("edit text", words, now.id(), String.valueOf(number));
    }

    private Refusal stale(Act.EditText asked, Job now) {
        Revision theirs = shelves.revision(now.id(), now.revision()).orElseThrow();
        return shelves.revision(now.id(), asked.onRevision())
                .map(base -> new Refusal(new Answer.Stale(asked.text(), base, theirs)))
                .orElseGet(() -> Refusal.of(
                        "This text was made from revision %d, which %s never had."
                                .formatted(asked.onRevision(), now.title()),
                        "Load the page again."));
    }

    private void write(String job, int number, String text) {
        changes.rows()
                .insert(
                        ShopTable.REVISION,
                        Row.empty()
                                .with("job", job)
                                .with("number", number)
                                .with("act", changes.act())
                                .with("text", text));
    }

    private Job job(String id) {
        return shelves.job(id).orElseThrow(() -> Refusal.of("There is no job called \"%s\".".formatted(id), ""));
    }

    private static void checkText(String text) {
        ReadResult read = JobBook.read(text);
        if (read.piece().isEmpty()) {
            throw Refusal.of("The text does not read, so it was not taken.", read.problems());
        }
    }

    private static void checkTitle(String title) {
        if (title.isBlank() || title.length() > LONGEST) {
            throw Refusal.of("A name has from 1 to %d characters.".formatted(LONGEST), "Write a shorter one.");
        }
    }

    private void checkClient(String client) {
        if (!client.isEmpty() && changes.rows().find(ShopTable.CLIENT, client).isEmpty()) {
            throw Refusal.of("There is no client called \"%s\".".formatted(client), "Add the client first.");
        }
    }

    private static String shortened(String words) {
        String line = words.replaceAll("\\s+", " ").strip();
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST);
    }

    Effect add(Client asked) {
        String wanted = Words.slug(asked.id().isEmpty() ? asked.name() : asked.id(), "client");
        String id =
                free(wanted, name -> changes.rows().find(ShopTable.CLIENT, name).isPresent());
        return put(new Client(id, asked.name(), asked.contact(), asked.note()), "new client: ");
    }

    Effect change(Client asked) {
        if (changes.rows().find(ShopTable.CLIENT, asked.id()).isEmpty()) {
            throw Refusal.of("There is no client called \"%s\".".formatted(asked.id()), "");
        }
        return put(asked, "changed the client ");
    }

    private Effect put(Client client, String words) {
        checkTitle(client.name());
        if (client.contact().length() > LONGEST_NOTE || client.note().length() > LONGEST_NOTE) {
            throw Refusal.of("A note has at most %d characters.".formatted(LONGEST_NOTE), "Write a shorter one.");
        }
        changes.put(ShopTable.CLIENT, Records.row(client));
        return new Effect("client", words + client.name(), "", client.id());
    }
}
