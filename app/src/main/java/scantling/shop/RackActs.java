package scantling.shop;

import java.util.Optional;
import scantling.stock.Stock;

/** Acts on the rack and on what is on hand besides wood. */
final class RackActs {
    private static final int LONGEST = 200;

    private final Changes changes;

    RackActs(Changes changes) {
        this.changes = changes;
    }

    Effect put(OnHand piece) {
        Stock stock = piece.stock();
        add(piece);
        return new Effect(
                "put on rack", "%s (%s) came into the rack".formatted(stock.id(), stock.material()), "", stock.id());
    }

    /** Behind everything that lies there. */
    void add(OnHand piece) {
        String id = piece.stock().id();
        check(id, piece.place());
        if (changes.rows().find(ShopTable.RACK, id).isPresent()) {
            throw Refusal.of("Something in the rack is already called \"%s\".".formatted(id), "Give it another name.");
        }
        long nr = changes.rows().number("SELECT coalesce(max(nr), 0) + 1 FROM rack");
        changes.put(ShopTable.RACK, RackRows.row(piece, nr));
    }

    Effect change(OnHand piece) {
        String id = piece.stock().id();
        check(id, piece.place());
        changes.put(ShopTable.RACK, RackRows.row(piece, inRack(id).number("nr")));
        return new Effect("change on rack", "changed %s in the rack".formatted(id), "", id);
    }

    Effect take(Act.TakeOffRack asked) {
        inRack(asked.id());
        changes.remove(ShopTable.RACK, asked.id());
        String why = asked.why().isBlank() ? "" : ": " + asked.why();
        return new Effect("take off rack", "%s left the rack%s".formatted(asked.id(), why), "", asked.id());
    }

    Row inRack(String id) {
        return changes.rows()
                .find(ShopTable.RACK, id)
                .orElseThrow(() -> Refusal.of("Nothing in the rack is called \"%s\".".formatted(id), ""));
    }

    Effect put(Supply asked) {
        Supply supply = asked.id().isEmpty() ? named(asked) : asked;
        check(supply.id(), supply.place());
        check(supply.name(), supply.unit());
        Optional<String> fault = fault(supply);
        if (fault.isPresent()) {
            throw Refusal.of(fault.get(), "");
        }
        changes.put(ShopTable.SUPPLY, Records.row(supply));
        String words =
                "%s: %s %s on hand".formatted(supply.name(), supply.amount().toPlainString(), supply.unit());
        return new Effect("put supply", words, "", supply.id());
    }

    private Supply named(Supply asked) {
        String wanted = Words.slug(asked.name(), "supply");
        String id = wanted;
        for (int n = 2; changes.rows().find(ShopTable.SUPPLY, id).isPresent(); n++) {
            id = wanted + "-" + n;
        }
        return new Supply(id, asked.kind(), asked.name(), asked.amount(), asked.unit(), asked.price(), asked.place());
    }

    private static Optional<String> fault(Supply supply) {
        try {
            Records.supply(Records.row(supply));
            return Optional.empty();
        } catch (IllegalArgumentException wrong) {
            return Optional.of(String.valueOf(wrong.getMessage()));
        }
    }

    Effect takeSupply(String id) {
        if (changes.rows().find(ShopTable.SUPPLY, id).isEmpty()) {
            throw Refusal.of("Nothing on hand is called \"%s\".".formatted(id), "");
        }
        changes.remove(ShopTable.SUPPLY, id);
        return new Effect("take supply", "no more of " + id, "", id);
    }

    private static void check(String name, String place) {
        if (name.isBlank() || name.length() > LONGEST || place.length() > LONGEST) {
            throw Refusal.of(
                    "A name has from 1 to %d characters, a place at most as many.".formatted(LONGEST),
                    "Write shorter ones.");
        }
    }
}
