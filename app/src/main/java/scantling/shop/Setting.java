package scantling.shop;

/**
 * One thing the shop has set for itself.
 *
 * @param section which part of the settings
 * @param name which of them: a key of allowances, a process, a day of the week, a name of the maker's own
 * @param value as the maker writes it; empty for what is usual
 */
public record Setting(Section section, String name, String value) {
    String id() {
        return section.word() + " / " + name;
    }
}
