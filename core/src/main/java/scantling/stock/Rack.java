package scantling.stock;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The stock on hand, in the order in which it was put there. Immutable: adding and removing give another rack.
 *
 * @param stock every piece; no two share an id
 */
public record Rack(List<Stock> stock) {
    /** A shop that buys everything. */
    public static final Rack EMPTY = new Rack(List.of());

    /** Takes its own copy and checks that no two pieces share an id. */
    public Rack {
        stock = List.copyOf(stock);
        if (stock.stream().map(Stock::id).distinct().count() != stock.size()) {
            throw new IllegalArgumentException("Two pieces in a rack share an id: (%s)."
                    .formatted(stock.stream().map(Stock::id).toList()));
        }
    }

    /** The piece with this id. */
    public Optional<Stock> find(String id) {
        return stock.stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    /** With one more piece. @throws IllegalArgumentException if the id is taken; ask {@link #find} first */
    public Rack with(Stock piece) {
        return new Rack(Stream.concat(stock.stream(), Stream.of(piece)).toList());
    }

    /** Without the piece of this id; the same rack if there is none. */
    public Rack without(String id) {
        return new Rack(stock.stream().filter(piece -> !piece.id().equals(id)).toList());
    }

    /** Boards, board offcuts among them. */
    public List<Board> boards() {
        return pieces(Board.class);
    }

    /** Sheets, sheet offcuts among them. */
    public List<Sheet> sheets() {
        return pieces(Sheet.class);
    }

    /** Sticks, stick offcuts among them. */
    public List<Stick> sticks() {
        return pieces(Stick.class);
    }

    /** Only what was left of something. */
    public List<Offcut> offcuts() {
        return stock.stream()
                .filter(Offcut.class::isInstance)
                .map(Offcut.class::cast)
                .toList();
    }

    private <T extends Stock> List<T> pieces(Class<T> kind) {
        return stock.stream()
                .map(piece -> piece instanceof Offcut offcut ? offcut.piece() : piece)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
