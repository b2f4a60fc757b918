package scantling.hardware;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Fixing;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/** The features of an assembly while they grow. Lives for one derivation, used by one thread. */
final class Workings {
    private final Assembly assembly;
    private final HardwareProfiles profiles;
    private final LengthFormat format;
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, List<Feature>> byPart = new LinkedHashMap<>();
    private final List<Feature> features = new ArrayList<>();
    private final List<Features.Choice> choices = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Fixing> fixings = new ArrayList<>();
    private final List<WoodScrew> screws;
    private final Map<String, Weak> weak = new LinkedHashMap<>();
    private final Map<String, Weak> packed = new LinkedHashMap<>();

    /** @param before what is cut in the parts already, by joints @param screws by gauge, with their holes */
    Workings(Assembly assembly, HardwareProfiles profiles, Features before, List<WoodScrew> screws) {
        this.screws = List.copyOf(screws);
        this.assembly = assembly;
        this.profiles = profiles;
        format = LengthFormat.of(assembly.piece().unit());
        assembly.parts().forEach(part -> parts.put(part.path(), part));
        before.features().forEach(this::keepClearOf);
    }

    Assembly assembly() {
        return assembly;
    }

    HardwareProfiles profiles() {
        return profiles;
    }

    /** A number in the words of the piece. */
    String say(Dim dim) {
        return format.formatWithUnit(dim.value());
    }

    Optional<Part> find(String path) {
        return Optional.ofNullable(parts.get(path));
    }

    /** The opening that must hold a part. */
    Optional<Opening> openingOf(Part part) {
        return assembly.openings().stream()
                .filter(opening -> opening.fills().contains(part.path()))
                .findFirst();
    }

    /** Everything but the last word of a path. */
    static String parent(String path) {
        int cut = path.lastIndexOf(Ledger.SEPARATOR);
        return cut < 0 ? "" : path.substring(0, cut);
    }

    /** A round hole. @param from the side of the part it is drilled from @param at its middle at that side */
    Feature hole(String path, String owner, Part part, Side from, Spot at, Drill drill) {
        Spot mouth = at.with(from.axis(), part.box().plane(from));
        return Cut.of(
                path,
                owner,
                Feature.Kind.HOLE,
                part,
                mouth.hole(from, drill.diameter(), drill.depth()),
                from,
                Optional.of(drill.diameter().half()),
                drill.setting(Cut.fence(part, from, mouth), say(drill.diameter())));
    }

    void add(Feature feature) {
        features.add(feature);
        keepClearOf(feature);
    }

    /** What was made for a fitting so far. */
    List<Feature> made(String owner) {
        return features.stream().filter(each -> each.owner().equals(owner)).toList();
    }

    private void keepClearOf(Feature feature) {
        byPart.computeIfAbsent(feature.part(), key -> new ArrayList<>()).add(feature);
    }

    void addAll(List<Feature> several) {
        several.forEach(this::add);
    }

    /** Whether a feature leaves the least wood to everything that is in its part already. */
    boolean isClear(Feature feature) {
        return findClash(feature).isEmpty();
    }

    /** The feature in its part that it comes too near to: holes keep the least wood between them, and out of all else. */
    Optional<Feature> findClash(Feature feature) {
        return byPart.getOrDefault(feature.part(), List.of()).stream()
                .filter(other -> Web.isTooThin(feature, other, profiles))
                .findFirst();
    }

    /** The fittings of a kind, in the order of the assembly. */
    List<Fitting> fittings(String profile) {
        return assembly.fittings().stream()
                .filter(fitting -> fitting.is("profile", profile))
                .toList();
    }

    /** A size of a profile. */
    Dim size(String profile, String value) {
        return profiles.of(profile, value);
    }

    /** A screw by its gauge. @throws IllegalStateException for one that is not there, which is a fault of the code */
    WoodScrew screw(int gauge) {
        return screws.stream()
                .filter(screw -> screw.gauge() == gauge)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No screw of gauge (%d) is known.".formatted(gauge)));
    }

    /** Notes what is bought besides the fitting itself. */
    void needs(String owner, int count, String what, String size) {
        if (count > 0) {
            fixings.add(new Fixing(owner, what, size, count));
        }
    }

    void choose(String owner, String sentence, List<Dim> numbers, String source) {
        choices.add(new Features.Choice(owner, sentence, numbers, source));
    }

    void find(Finding finding) {
        findings.add(finding);
    }

    void caution(String subject, String sentence, List<Dim> numbers, String source, String remedy) {
        findings.add(new Finding(Finding.Severity.CAUTION, subject, sentence, numbers, source, remedy));
    }

    /** Remembers that a part is too thin for what is screwed to it; all of it is told in one finding. */
    void weakly(Part part, Dim bite, String fitting) {
        weak.computeIfAbsent(part.path(), key -> new Weak(part, bite, new ArrayList<>()))
                .fittings()
                .add(fitting);
    }

    /** Remembers that a part lies behind what is screwed to it. */
    void packed(Part part, Dim by, String fitting) {
        packed.computeIfAbsent(part.path(), key -> new Weak(part, by, new ArrayList<>()))
                .fittings()
                .add(fitting);
    }

    private record Weak(Part part, Dim dim, List<String> fittings) {
        String names() {
            return fittings.stream().distinct().collect(Collectors.joining(", "));
        }
    }

    private void tellWeak() {
        weak.values()
                .forEach(one -> caution(
                        one.part().path(),
                        "Screws hold only %s deep in %s, which is %s thick: %s."
                                .formatted(
                                        say(one.dim()),
                                        one.part().path(),
                                        say(one.part().thickness()),
                                        one.names()),
                        List.of(one.dim(), one.part().thickness()),
                        "common practice: slides want 10 mm (3/8 in) of thread at least, and 3 mm (1/8 in) left behind"
                                + " the hole",
                        "Make it %s thick, or let a strip of solid wood into it where the slides go."
                                .formatted(say(profiles.of("slide", "least bite")
                                        .plus(profiles.of("hole", "least behind"))))));
        packed.values()
                .forEach(one -> find(new Finding(
                        Finding.Severity.NOTE,
                        one.part().path(),
                        "%s lies %s behind the side of the opening: %s."
                                .formatted(one.part().path(), say(one.dim()), one.names()),
                        List.of(one.dim()),
                        "worked out from the parts",
                        "Pack it out with veneer or card behind the screws, so that the slides run parallel.")));
    }

    Features done() {
        tellWeak();
        List<Features.Choice> all = new ArrayList<>(choices);
        all.addAll(new Told(this).of(features, choices));
        return new Features(features, all, findings, fixings);
    }
}
