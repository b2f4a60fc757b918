package scantling.bench.trust;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The forms that the pages of an open shop hold, found by following their links: where each is sent, and its fields. */
final class PageForms {
    private static final int MOST_PAGES = 400;
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
    private static final Pattern FORM = Pattern.compile("<form([^>]*)>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern SENT = Pattern.compile("(?:action|hx-post)=\"(/[^\"?]*)");
    private static final Pattern POSTED = Pattern.compile("method=\"post\"|hx-post=", Pattern.CASE_INSENSITIVE);
    private static final Pattern FIELD = Pattern.compile("\\bname=\"([^\"]+)\"");

    private final Caller caller;
    private final Set<String> seen = new HashSet<>();
    private final Deque<String> open = new ArrayDeque<>(List.of("/"));
    private final Map<String, Set<String>> forms = new TreeMap<>();

    private PageForms(Caller caller) {
        this.caller = caller;
    }

    /** All of them. @return fields by where they are sent */
    static Map<String, Set<String>> of(Caller caller) throws IOException, InterruptedException {
        PageForms forms = new PageForms(caller);
        while (!forms.open.isEmpty() && forms.seen.size() < MOST_PAGES) {
            forms.read(forms.open.remove());
        }
        return forms.forms;
    }

    /** Links with a question are followed once for each page that they ask. */
    private void read(String link) throws IOException, InterruptedException {
        if (link.startsWith("/assets/") || !seen.add(link.replaceFirst("=.*", ""))) {
            return;
        }
        String page = caller.get(link).body();
        LINK.matcher(page).results().forEach(found -> open.add(found.group(1).replace("&amp;", "&")));
        Matcher form = FORM.matcher(page);
        while (form.find()) {
            Matcher sent = SENT.matcher(form.group(1));
            if (POSTED.matcher(form.group(1)).find() && sent.find()) {
                Set<String> fields = forms.computeIfAbsent(sent.group(1), where -> new TreeSet<>());
                FIELD.matcher(form.group(2)).results().forEach(found -> fields.add(found.group(1)));
            }
        }
    }
}
