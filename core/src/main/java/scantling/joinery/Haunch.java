package scantling.joinery;

import scantling.measure.Dim;

/** The short step beside a tenon that fills the groove, or the mortise's end, at the end of a stile. */
final class Haunch {
    private Haunch() {}

    /**
     * Cuts the haunch and its seat on the side of the wider shoulder.
     *
     * @param wide from where to where a plain tenon would stand, as offsets
     * @return what is left for the tenon: half of the rail at most
     */
    static Dim[] cut(Meeting at, Bench bench, Dim thick, Dim[] wide) {
        Dim most = bench.rules().share("haunched tenon width").of(at.runSize());
        Dim width = wide[1].minus(wide[0]);
        Dim tenon = width.compareTo(most) <= 0 ? width : most;
        boolean above = at.runSize().minus(wide[1]).compareTo(wide[0]) >= 0;
        Dim[] kept = above ? new Dim[] {wide[0], wide[0].plus(tenon)} : new Dim[] {wide[1].minus(tenon), wide[1]};
        Dim[] haunch = above ? new Dim[] {kept[1], at.runSize()} : new Dim[] {Dim.ZERO, kept[0]};
        Dim usual = bench.rules().length("haunch depth");
        Dim half = at.depth().half();
        Dim deep = usual.compareTo(half) <= 0 ? usual : half;
        Tenons.pair(at, bench, "haunch", haunch, thick, deep, deep);
        return kept;
    }
}
