package scantling.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.piece.SettingsText.Entry;
import scantling.route.Minutes;
import scantling.route.Times;

/** Reads a shop's own time standards: {@code dowel: 3 to 6 min} a unit, {@code dowel: 8 min} to set up. */
final class TimeWords {
    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,3})?)";
    private static final Pattern RANGE = Pattern.compile(NUMBER + "(?:\\s*(?:to|-)\\s*" + NUMBER + ")?\\s*(?:min)?");
    private static final String OWN = "the shop's own";

    private final ShopWords words;

    TimeWords(ShopWords words) {
        this.words = words;
    }

    Times read(List<Entry> each, List<Entry> setUps) {
        List<String> works = List.copyOf(Times.works());
        Times usual = Times.standard();
        Map<String, Times.Standard> own = new LinkedHashMap<>();
        for (Entry entry : words.known(each, works, "kind of work")) {
            Times.Standard before = usual.of(entry.key());
            minutes(entry, false)
                    .ifPresent(minutes -> own.put(
                            entry.key(),
                            new Times.Standard(entry.key(), before.unit(), minutes, before.setUp(), OWN, 0)));
        }
        for (Entry entry : words.known(setUps, works, "kind of work")) {
            Times.Standard before = own.getOrDefault(entry.key(), usual.of(entry.key()));
            minutes(entry, true)
                    .ifPresent(minutes -> own.put(
                            entry.key(),
                            new Times.Standard(entry.key(), before.unit(), before.each(), minutes.likely(), OWN, 0)));
        }
        return Times.with(own);
    }

    private Optional<Minutes> minutes(Entry entry, boolean zeroToo) {
        Matcher said = RANGE.matcher(entry.value());
        double low = said.matches() ? Double.parseDouble(said.group(1)) : -1;
        double high = said.matches() && said.group(2) != null ? Double.parseDouble(said.group(2)) : low;
        if (low < 0 || high < low || !zeroToo && low <= 0) {
            words.problem(
                    entry,
                    "\"%s\" is no time for \"%s\".".formatted(entry.value(), entry.key()),
                    zeroToo ? "Write minutes: 8 min." : "Write minutes greater than zero: 4 min, or 3 to 6 min.");
            return Optional.empty();
        }
        return Optional.of(new Minutes(low, (low + high) / 2, high));
    }
}
