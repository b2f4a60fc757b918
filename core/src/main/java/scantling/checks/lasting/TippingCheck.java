package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.space.Extent;

/** Whether a piece tips forward, and whether the US rule for clothing storage looks at it. It screens, it never certifies. */
final class TippingCheck {
    private static final String STATICS = "moments about the front feet, parts' own densities";
    private static final String SCREEN = " This screens; only the tests of the standard certify.";

    private final Assembly assembly;
    private final Woods woods;
    private final Drawers drawers;
    private final List<Drawers.Drawer> all;
    private final Balance balance;
    private final Extent extent;

    TippingCheck(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.woods = woods;
        this.drawers = new Drawers(assembly);
        this.all = drawers.all();
        this.balance = new Balance(assembly, woods, all);
        this.extent = Drawers.extent(assembly.parts());
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        if (!(balance.mass() > 0)) {
            return findings;
        }
        unweighed(findings);
        boolean opens = !all.isEmpty() || drawers.behindDoors() > 0;
        findings.addAll(new SlideLoads(assembly, all).check());
        if (isInScope() && Scope.mayHoldClothes(assembly.piece().title())) {
            findings.add(clothing());
        }
        boolean builtIn = Scope.isBuiltIn(assembly.piece().title());
        if (!all.isEmpty()) {
            Optional.of(open())
                    .filter(finding -> !builtIn || finding.severity() != Finding.Severity.NOTE)
                    .ifPresent(findings::add);
        }
        if (extent.top() > Figures.of("anchor from height") && !builtIn) {
            anchor(findings, opens);
        }
        return findings;
    }

    private boolean isInScope() {
        return extent.top() - extent.bottom() >= Figures.of("scope height")
                && balance.mass() >= Figures.of("scope mass")
                && volume() >= Figures.of("scope volume");
    }

    private double volume() {
        return drawers.behindDoors()
                + all.stream().mapToDouble(Drawers.Drawer::volume).sum();
    }

    private void unweighed(List<Finding> findings) {
        if (!balance.unweighed().isEmpty()) {
            findings.add(finding(
                    "weight",
                    Finding.Severity.NOTE,
                    "The weight leaves out %d parts of %s: no density is known."
                            .formatted(
                                    balance.unweighed().size(),
                                    balance.unweighed().get(0).material().of()),
                    "the timber tables",
                    woods.offer(balance.unweighed().get(0), Woods.Known.WEIGHT)));
        }
    }

    /** Mass on the front of an open drawer that tips it, kg; negative when it tips by itself. */
    private static double spare(double moment, double reach) {
        return reach > 0 ? moment / reach : Double.POSITIVE_INFINITY;
    }

    private Finding open() {
        double spare = spare(balance.open(0), balance.reach());
        double soft = spare(balance.onSoftFloor(balance.open(0)), balance.reach());
        boolean child = soft < Figures.of("child mass");
        String how = spare < 0
                ? "it tips over by itself"
                : spare == Double.POSITIVE_INFINITY
                        ? "none reaches past its feet"
                        : "%s on the furthest front tips it, on carpet %s; with the drawers full %s"
                                .formatted(
                                        Say.mass(spare),
                                        Say.mass(Math.max(0, soft)),
                                        Say.mass(Math.max(0, spare(full(), balance.reach()))));
        return finding(
                "tipping",
                child ? Finding.Severity.CAUTION : Finding.Severity.NOTE,
                "Empty it weighs %s; with every drawer open %s.%s"
                        .formatted(
                                Say.mass(balance.mass()), how, child ? " A child of 60 lb would bring it down." : ""),
                STATICS
                        + "; full: " + Figures.sourceOf("clothing density")
                        + "; drawers open by %s of their depth where no full extension is said (%s); child: %s"
                                .formatted(
                                        Figures.of("drawer opens by"),
                                        Figures.sourceOf("drawer opens by"),
                                        Figures.sourceOf("child mass")),
                child
                        ? "Anchor it to the wall, let only one drawer open at a time, or move the feet forward and"
                                + " weight low and back."
                        : "Anchor it to the wall all the same where children live.");
    }

    /** What holds it down with every drawer full and open, kg mm. */
    private double full() {
        return balance.open(Figures.of("clothing density") / 1000);
    }

    private Finding clothing() {
        double loaded = full();
        double spare = spare(loaded, balance.reach());
        boolean passes = all.isEmpty() || spare >= Figures.of("child mass");
        return finding(
                "clothing storage",
                Finding.Severity.CAUTION,
                "At %s and %.0f dm3 (%.1f ft3) this is within the US rule if it is made for clothing. Loaded, all drawers open and 60 lb on the furthest, it %s.%s"
                        .formatted(
                                Say.mass(balance.mass()),
                                volume(),
                                volume() / 28.3168466,
                                passes ? "stays up on a hard floor" : "tips",
                                SCREEN),
                "16 CFR 1261 (ASTM F2057-23): 27 in, 30 lb and 3.2 ft3 together; clothing load "
                        + Figures.sourceOf("clothing density"),
                "Have it tested to ASTM F2057-23, supply an ASTM F3096 restraint and the warning label%s."
                        .formatted(
                                passes
                                        ? ""
                                        : ", and let only one drawer open at a time or add weight low at the back"));
    }

    private void anchor(List<Finding> findings, boolean opens) {
        double height = Math.min(extent.top(), Figures.of("pull height"));
        double pull = balance.shut() * Figures.of("gravity") / height;
        boolean light = pull < Figures.of("pull");
        boolean slender = extent.top() - extent.bottom()
                > Figures.of("slender height over depth") * (extent.back() - extent.front());
        if (light || opens || slender) {
            findings.add(finding(
                    "anchoring",
                    light ? Finding.Severity.CAUTION : Finding.Severity.NOTE,
                    "Empty and shut, a pull of %.0f N (%.0f lb) near its top tips it; its weight lies %s high."
                            .formatted(
                                    Math.max(0, pull),
                                    Math.max(0, pull) / 4.4482216,
                                    Say.of(assembly).near(balance.centreHeight())),
                    STATICS + "; pull of 10 lb: " + Figures.sourceOf("pull") + "; anchoring: "
                            + Figures.sourceOf("anchor from height"),
                    "Anchor it to a stud or to solid wall; a wall fixing is only as strong as the wall, and"
                            + " carpet halves what it bears."));
        }
    }

    private Finding finding(String rule, Finding.Severity severity, String sentence, String source, String remedy) {
        List<Dim> numbers = List.of(assembly.piece().height(), assembly.piece().depth());
        return new Finding(severity, assembly.piece().title(), sentence, numbers, source, remedy).by(rule);
    }
}
