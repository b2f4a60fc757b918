package scantling.construct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.piece.Language;

/** All kinds of elements. To add one, write its class and name it here. */
final class Elements {
    private static final List<ElementKind> ALL = List.of(
            new EndsElement(),
            new FrameElement(),
            new LegsAndRailsElement(),
            new PostsElement(),
            new RailsElement(),
            new DrawersElement(),
            new DrawerElement(),
            new DoorsElement(),
            new SlatsElement(),
            new HangingRailElement(),
            new CaseElement(),
            new BoardElement(),
            new ColumnsElement(),
            new RowsElement(),
            new DepthsElement(),
            new FacingElement(),
            new ShelvesElement(),
            new TopElement(),
            new PlinthElement(),
            new FaceFrameElement(),
            new BackElement(),
            new PanelElement(),
            new LooseElement());

    private Elements() {}

    static Map<String, ElementKind> byKey() {
        Map<String, ElementKind> kinds = new LinkedHashMap<>();
        ALL.forEach(kind -> kinds.put(kind.shape().key(), kind));
        return kinds;
    }

    static Language language() {
        return new Language(ALL.stream().map(ElementKind::shape).toList());
    }
}
