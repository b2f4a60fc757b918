package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Finding.Severity;
import scantling.construct.Part;

/** Shelves, tops and bottoms that sag further than a named rule allows, each with what would keep it. */
final class ShelfCheck {
    private final Assembly assembly;
    private final Woods woods;
    private final SagWords words;

    ShelfCheck(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.woods = woods;
        this.words = new SagWords(assembly);
    }

    List<Finding> check() {
        SpannedBoards boards = new SpannedBoards(assembly, woods);
        List<Finding> findings = new ArrayList<>();
        boards.unheld().forEach(part -> findings.add(unheld(part)));
        boards.unknown().forEach(part -> findings.add(unknown(part)));
        boards.alike().forEach(alike -> judge(alike).ifPresent(findings::add));
        return findings;
    }

    /** What each shelf may carry, those alike once. */
    List<Carrying> carry() {
        return new SpannedBoards(assembly, woods)
                .alike().stream()
                        .map(alike -> Carrying.shelves(
                                alike.stream().map(each -> each.part().path()).toList(),
                                alike.get(0).shelf(),
                                SpannedBoards.area(alike.get(0).part().box()),
                                PlannedLoad.of(assembly, alike.get(0).part().path())))
                        .toList();
    }

    private Optional<Finding> judge(List<Spanned> alike) {
        Spanned one = alike.get(0);
        PlannedLoad load = PlannedLoad.of(assembly, one.part().path());
        return SagRule.all().stream()
                .map(load::under)
                .filter(rule -> !one.shelf().keeps(rule, load.pascal()))
                .findFirst()
                .map(rule -> finding(alike, rule, load));
    }

    private Finding finding(List<Spanned> alike, SagRule rule, PlannedLoad load) {
        Spanned one = alike.get(0);
        double sag = one.shelf().sag(rule, load.pascal());
        String source = rule.source() + "; sag by Wood Handbook Eq. 9-1; load: " + load.sourceUnder(rule)
                + (rule.creeps() ? "; creep: " + new Stiffness(woods).creepSource(one.part()) : "");
        boolean heldKeeps = one.isHeld() && one.held().keeps(rule, load.pascal());
        return new Finding(
                        heldKeeps ? Severity.NOTE : rule.severity(),
                        one.part().path(),
                        words.sentence(alike, rule, load),
                        List.of(SagWords.sag(one, sag), one.span(), one.part().thickness()),
                        source,
                        words.remedy(one.shelf(), rule, load.pascal()))
                .by("sag")
                .offering(words.changes(one, rule, load.pascal()));
    }

    private static Finding unheld(Part part) {
        return new Finding(
                        Severity.CAUTION,
                        part.path(),
                        "Nothing was found to carry %s at both ends, so its sag is not known.".formatted(part.path()),
                        List.of(part.length()),
                        "the parts and joints of this piece",
                        "Say what holds it, or join it to what stands beside it.")
                .by("carried");
    }

    private Finding unknown(Part part) {
        return new Finding(
                        Severity.NOTE,
                        part.path(),
                        "How stiff %s is, at this thickness, is in no table; the sag of %s is not known."
                                .formatted(part.material().of(), part.path()),
                        List.of(part.thickness()),
                        "the timber tables",
                        woods.offer(part, Woods.Known.STIFFNESS))
                .by("sag");
    }
}
