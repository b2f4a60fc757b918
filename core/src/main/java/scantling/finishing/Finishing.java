package scantling.finishing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.piece.FinishText;
import scantling.piece.Problem;

/** Works out the finish of a piece from what its text says of it. */
public final class Finishing {
    private static final String REST = "the piece";

    private final List<Face> faces;
    private final FinishText text;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final First first;

    private Finishing(Assembly assembly) {
        faces = Surfaces.of(assembly);
        text = assembly.piece().coating();
        first = new First(assembly);
    }

    /** What goes on the wood. Every problem of the text and every finding is told at once. */
    public static FinishPlan plan(Assembly assembly) {
        return new Finishing(assembly).plan();
    }

    /** One group as said: its habits, its steps, its faces. */
    private record Said(String name, Habits habits, List<Applied> steps, Optional<Boolean> before, List<Face> faces) {}

    private FinishPlan plan() {
        CoatTable coats = new OwnCoats(CoatTable.standard(), problems).with(text.coats());
        Habits habits = Habits.of(text, problems);
        List<Said> all = said(coats, habits);
        List<FinishGroup> groups = new ArrayList<>();
        for (boolean before : new boolean[] {true, false}) {
            all.forEach(one -> group(one, before).ifPresent(groups::add));
        }
        all.forEach(one ->
                findings.addAll(new RuleCheck(subject(one.name()), one.habits(), one.steps(), one.faces()).findings()));
        findings.addAll(Balance.findings(faces, groups));
        return new FinishPlan(faces, groups, Buying.of(groups), TestBoard.of(groups, habits), merged(), problems);
    }

    /** What is said of several groups in the same words is said once, of the finish. */
    private List<Finding> merged() {
        Map<String, List<Finding>> alike = new LinkedHashMap<>();
        findings.forEach(finding -> alike.computeIfAbsent(
                        finding.sentence() + finding.remedy() + finding.severity(), key -> new ArrayList<>())
                .add(finding));
        return alike.values().stream().map(Finishing::one).toList();
    }

    private static Finding one(List<Finding> alike) {
        Finding first = alike.get(0);
        List<String> subjects = alike.stream().map(Finding::subject).distinct().toList();
        if (subjects.size() == 1) {
            return first;
        }
        return new Finding(
                first.severity(),
                "finish",
                "%s So in: %s.".formatted(first.sentence(), String.join("; ", subjects)),
                first.numbers(),
                first.source(),
                first.remedy(),
                first.rule(),
                first.changes());
    }

    private static String subject(String name) {
        return name.equals(REST) ? "finish" : "finish / " + name;
    }

    private List<Said> said(CoatTable coats, Habits habits) {
        Map<Face, Integer> owner = new IdentityHashMap<>();
        Selection selection = new Selection(faces, problems);
        for (int i = 0; i < text.groups().size(); i++) {
            for (Face face : selection.of(text.groups().get(i))) {
                owner.put(face, i);
            }
        }
        List<Said> all = new ArrayList<>();
        all.add(new Said(REST, habits, steps(coats, REST, habits, text.steps()), Optional.empty(), owned(owner, -1)));
        for (int i = 0; i < text.groups().size(); i++) {
            FinishText.Group group = text.groups().get(i);
            Habits own = habits.in(group, problems);
            List<Applied> steps = steps(coats, group.name(), own, group.steps());
            all.add(new Said(group.name(), own, steps, before(group), owned(owner, i)));
        }
        return all.stream()
                .filter(one -> !one.steps().isEmpty() && !one.faces().isEmpty())
                .toList();
    }

    private List<Applied> steps(CoatTable coats, String name, Habits habits, List<FinishText.Step> steps) {
        return new StepReader(coats, subject(name), habits.by(), findings).read(steps);
    }

    private Optional<Boolean> before(FinishText.Group group) {
        Optional<String> word = group.before().map(FinishText.Word::text);
        if (word.isPresent() && !List.of("yes", "no", "true", "false").contains(word.get())) {
            problems.add(new Problem(
                    group.before().get().span(),
                    "\"%s\" is neither yes nor no.".formatted(word.get()),
                    "Say whether it is finished before assembly: yes or no."));
        }
        return word.map(said -> said.equals("yes") || said.equals("true"));
    }

    /** What comes finished needs no coat. */
    private List<Face> owned(Map<Face, Integer> owner, int group) {
        return faces.stream()
                .filter(face -> owner.getOrDefault(face, -1) == group)
                .filter(face -> !face.part().material().prefinished() || face.isEdge() || face.isEnd())
                .toList();
    }

    private Optional<FinishGroup> group(Said said, boolean before) {
        Map<String, Integer> reasons = new LinkedHashMap<>();
        List<Face> mine = new ArrayList<>();
        for (Face face : said.faces()) {
            Optional<String> why = first.why(face.part());
            boolean early = said.before().orElse(why.isPresent());
            if (early == before && reach(face, before) > 0) {
                mine.add(face);
                why.ifPresent(reason -> reasons.merge(reason, 1, Integer::sum));
            }
        }
        if (mine.isEmpty()) {
            return Optional.empty();
        }
        FinishGroup.Areas areas = areas(mine, before);
        return Optional.of(new FinishGroup(
                said.name(),
                before,
                before ? String.join(" ", reasons.keySet()) : "",
                mine,
                areas,
                new Coatings(said.habits(), mine, areas).of(said.steps()),
                before ? masks(mine) : List.of()));
    }

    /** Before assembly a cloth reaches what will be covered, too; never what takes glue. */
    private static double reach(Face face, boolean before) {
        return before ? face.open() + face.covered() : face.open();
    }

    private static FinishGroup.Areas areas(List<Face> faces, boolean before) {
        double edges = 0;
        double ends = 0;
        for (Face face : faces) {
            edges += face.isEdge() ? reach(face, before) : 0;
            ends += face.isEnd() ? reach(face, before) : 0;
        }
        double show = faces.stream().mapToDouble(Face::show).sum();
        double inside = faces.stream().mapToDouble(Face::inside).sum();
        double whole = faces.stream().mapToDouble(face -> reach(face, before)).sum();
        return new FinishGroup.Areas(show, inside, whole - show - inside, whole, edges, ends);
    }

    private static List<FinishGroup.Mask> masks(List<Face> faces) {
        return faces.stream()
                .flatMap(face -> face.glueMarks().stream()
                        .map(patch -> new FinishGroup.Mask(face.part().path(), face.surface(), patch)))
                .toList();
    }
}
