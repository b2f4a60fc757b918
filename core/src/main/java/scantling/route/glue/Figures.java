package scantling.route.glue;

import scantling.measure.Length;
import scantling.timber.Table;

/** Single numbers of gluing, each with its source in {@code route/glue-figures.csv}. */
final class Figures {
    static final Length CLAMP_SPACING = of("clamp spacing");
    static final Length JAW_ROOM = of("jaw room");
    static final Length CAUL_FROM = of("caul from");

    private Figures() {}

    private static Length of(String name) {
        return Length.ofMillimetres(
                Table.read("route/glue-figures.csv").getRow("name", name).number("value"));
    }
}
