package scantling.bench.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.measure.Span;
import scantling.piece.PieceEditor;

/** Two windows at the desk with the same job: one changes the width of the piece, the other looks on. */
final class Desk {
    private static final Pattern VERSION = Pattern.compile("data-version=\"([^\"]*)\" data-revision=\"(\\d+)\"");

    private final Caller first;
    private final Caller second;
    private final String job;
    private final String stamp;
    private final int at;
    private final int width;
    private String version = "";
    private String revision = "";

    private Desk(int port, String job, String text, Span given) throws IOException, InterruptedException {
        this.first = new Caller(port);
        this.second = new Caller(port);
        this.job = job;
        this.at = given.start();
        this.width = Integer.parseInt(text.substring(given.start(), given.end()));
        this.stamp = first.stamp();
    }

    /** What the other window has received. @param length of what it was sent */
    record Arrived(long nanoTime, int length) {}

    /** Opens both windows. @param job its path @param text of the piece, with its width given */
    static Desk open(int port, String job, String text, Consumer<Arrived> arrived)
            throws IOException, InterruptedException {
        Span given = PieceEditor.findSpan(text, Construction.language(), "size / width")
                .orElseThrow();
        Desk desk = new Desk(port, job, text, given);
        desk.note(desk.first.get(job).body());
        desk.listen(desk.version, arrived);
        return desk;
    }

    /** Sends another width. @param edit its number: the widths of edits after each other are never the same */
    HttpResponse<String> change(int edit) throws IOException, InterruptedException {
        return first.part(
                job + "/given",
                stamp,
                Map.of("at", "" + at, "value", width(edit), "revision", revision, "version", version));
    }

    /** Reads what came back. @throws IOException when the width was not taken */
    void check(HttpResponse<String> answer) throws IOException {
        if (answer.statusCode() != 200 || !answer.body().contains("in place of")) {
            throw new IOException("not taken: " + answer.statusCode() + " "
                    + answer.body().lines().limit(3).toList());
        }
        note(answer.body());
    }

    /** A little more than was given first. */
    private String width(int edit) {
        return "%d.%d".formatted(width + edit / 9 % 100, 1 + edit % 9);
    }

    private void note(String body) throws IOException {
        Matcher found = VERSION.matcher(body);
        if (!found.find()) {
            throw new IOException("the page does not say which sheet it shows");
        }
        version = found.group(1);
        revision = found.group(2);
    }

    /** The other window: it hears of a change and asks for what it lacks, as the page's script does. */
    private void listen(String shown, Consumer<Arrived> arrived) {
        Thread ear = new Thread(() -> hear(shown, arrived), "other window");
        ear.setDaemon(true);
        ear.start();
    }

    private void hear(String shown, Consumer<Arrived> arrived) {
        String own = shown;
        try {
            for (String news : (Iterable<String>) second.heard(job + "/watch", "sheet")::iterator) {
                if (!news.equals(own)) {
                    HttpResponse<String> answer = second.part(job + "/since?version=" + Caller.coded(own));
                    Matcher found = VERSION.matcher(answer.body());
                    own = found.find() ? found.group(1) : own;
                    arrived.accept(new Arrived(System.nanoTime(), answer.body().length()));
                }
            }
        } catch (IOException | UncheckedIOException closed) {
            return;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
