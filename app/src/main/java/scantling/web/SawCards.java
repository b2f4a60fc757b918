package scantling.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.cutting.CutDirection;
import scantling.cutting.CutMarks;
import scantling.cutting.CutPiece;
import scantling.cutting.CutStep;
import scantling.cutting.Matches;
import scantling.measure.Ledger;
import scantling.piece.Material;
import scantling.plan.CutGroup;
import scantling.route.Operation;
import scantling.shop.SawnAsPlanned;
import scantling.shop.SawnSoFar;
import scantling.web.BenchCard.Dial;
import scantling.web.BenchCard.First;
import scantling.web.BenchCard.Tick;
import scantling.web.BenchCard.Time;
import scantling.web.BenchCard.Told;

/**
 * Cards for the saw: one for each board, sheet or stick, with its cuts in their order. When it is done, the piece of stock
 * is gone, the rough pieces are there, and what is worth keeping lies in the rack.
 */
final class SawCards {
    private final BenchCards all;

    SawCards(BenchCards all) {
        this.all = all;
    }

    List<BenchCard> cards(Operation operation) {
        int number = 0;
        List<BenchCard> cards = new ArrayList<>();
        Optional<CutGroup> group = Optional.empty();
        for (CutGroup one : all.plan().cuts()) {
            if (operation.id().equals(Ledger.path(operation.step().words(), one.title()))) {
                group = Optional.of(one);
                for (CutPiece piece : one.plan().used()) {
                    cards.add(card(operation, one, piece, all.stock(number + piece.number() - 1)));
                }
            }
            number += one.plan().used().size();
        }
        return group.isPresent() ? cards : List.of(done(operation));
    }

    private BenchCard card(Operation operation, CutGroup group, CutPiece piece, int drawing) {
        String told = piece.steps().stream()
                .map(step -> step.number() + " " + step.fence() + " " + step.first() + " " + step.second())
                .collect(Collectors.joining("; ", piece.stock().name() + ": ", ""));
        // a board keeps its number, and what is ticked on it, when those before it are sawn
        int before = all.progress().piecesSawn(operation);
        int number = before + piece.number();
        String key = "%s / %d, %08x".formatted(operation.id(), number, told.hashCode());
        int left = group.plan().used().size();
        int pieces = before + left;
        String title = "Saw %s%s: %s"
                .formatted(kind(group), pieces == 1 ? "" : " %d of %d".formatted(number, pieces), group.title());
        CutMarks marks = CutMarks.of(piece.steps());
        List<Tick> ticks = piece.steps().stream()
                .map(step -> new Tick(
                        key + " / " + step.number(),
                        "",
                        words(step, marks),
                        false,
                        all.progress().isTicked(key + " / " + step.number()),
                        List.of(dial(step)),
                        -1))
                .toList();
        List<First> first = first(group, piece);
        return new BenchCard(
                key,
                operation.step().words(),
                title,
                List.of(),
                new Told(notes(piece), RouteCards.cautions(operation), List.of(), List.of(), first),
                drawing,
                ticks,
                first.stream().map(First::name).toList(),
                new Time((int) Math.ceil(operation.hands().likely() / pieces), 0, ""),
                SawnAsPlanned.written(SawnAsPlanned.of(piece, group, all.plan().blanks(), all.rack(), all.job())),
                SawnSoFar.written(piece, group, all.plan().blanks(), all.rack(), all.job()),
                false);
    }

    /** Of a sheet or stick parts come in their size; those of a board are cut to theirs later. */
    private List<First> first(CutGroup group, CutPiece piece) {
        return group.material().kind() == Material.Kind.SOLID
                ? List.of()
                : all.first(piece.parts().stream()
                        .map(placed -> placed.part().name())
                        .collect(Collectors.toSet()));
    }

    private List<String> notes(CutPiece piece) {
        List<String> notes = new ArrayList<>();
        boolean here = all.rack().find(piece.stock().name()).isPresent();
        notes.add(
                (here ? "From the rack: " : "Bought for this: ") + piece.stock().name() + ".");
        long kept = piece.offcuts().stream().filter(offcut -> offcut.keep()).count();
        if (kept > 0) {
            notes.add(kept == 1 ? "One offcut goes back to the rack." : kept + " offcuts go back to the rack.");
        }
        notes.addAll(Matches.told(piece, name -> all.marked(name) + " " + name));
        return notes;
    }

    private static String kind(CutGroup group) {
        return switch (group.material().kind()) {
            case SOLID -> "board";
            case SHEET -> "sheet";
            case STICK -> "stick";
        };
    }

    private Dial dial(CutStep step) {
        boolean along = step.direction() == CutDirection.ALONG;
        return all.dial(along ? "Rip, fence at" : "Crosscut, stop at", step.fence());
    }

    private String words(CutStep step, CutMarks marks) {
        String from = marks.mark(step.piece());
        return step.isTrim()
                ? "Cut %d, %s: trim".formatted(step.number(), from)
                : "Cut %d, %s: %s and %s"
                        .formatted(step.number(), from, goes(step.first(), marks), goes(step.second(), marks));
    }

    private String goes(String name, CutMarks marks) {
        return CutMarks.isLabel(name) ? "piece " + marks.mark(name) : all.marked(name);
    }

    private static BenchCard done(Operation operation) {
        return new BenchCard(
                operation.id(),
                operation.step().words(),
                operation.title(),
                List.of(),
                new Told(List.of("All of it is sawn."), List.of(), List.of(), List.of(), List.of()),
                -1,
                List.of(),
                List.of(),
                new Time(0, 0, ""),
                "",
                "",
                true);
    }
}
