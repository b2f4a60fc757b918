package scantling.piece;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import scantling.measure.Span;

/**
 * Reads YAML into a tree. Only the plain core of YAML is taken: keys, lists and values. Anchors, aliases, tags, keys said
 * twice and second documents are refused, and so is anything too deep or too large, before it can cost anything.
 */
final class YamlTree {
    /** Deeper than any piece is nested; keeps every later recursion shallow. */
    private static final int DEEPEST = 40;

    private static final int MOST_NODES = 50_000;

    private final Places places;
    private final Problems problems;
    private final Deque<Frame> open = new ArrayDeque<>();
    private Optional<Node> root = Optional.empty();
    private int documents;
    private int nodes;

    private YamlTree(Places places, Problems problems) {
        this.places = places;
        this.problems = problems;
    }

    /** The tree of a text; empty when it cannot be read to its end, which is then among the problems. */
    static Optional<Node> read(String text, Problems problems) {
        Places places = new Places(text);
        YamlTree tree = new YamlTree(places, problems);
        LoadSettings settings = LoadSettings.builder().build();
        try {
            for (Event event : new Parse(settings).parseString(places.yaml())) {
                if (!tree.take(event)) {
                    return Optional.empty();
                }
            }
            return tree.root;
        } catch (YamlEngineException broken) {
            YamlTrouble.report(broken, places, problems);
            return Optional.empty();
        }
    }

    /** A tree of a usual value, all of it standing at one place. */
    static Node usual(String text, Span at) {
        boolean simple = text.isEmpty() || "[{".indexOf(text.charAt(0)) < 0;
        if (simple) {
            return Node.Scalar.usual(text, at);
        }
        Node tree = read(text, new Problems())
                .orElseThrow(() -> new IllegalStateException("The usual value (%s) cannot be read.".formatted(text)));
        return moved(tree, at);
    }

    private static Node moved(Node node, Span at) {
        if (node instanceof Node.Items list) {
            return new Node.Items(
                    list.items().stream().map(item -> moved(item, at)).toList(), at);
        }
        if (node instanceof Node.Fields fields) {
            return new Node.Fields(
                    fields.entries().stream()
                            .map(entry ->
                                    new Node.Entry(Node.Scalar.usual(entry.key().text(), at), moved(entry.value(), at)))
                            .toList(),
                    at);
        }
        return node instanceof Node.Scalar scalar ? Node.Scalar.usual(scalar.text(), at) : new Node.Refused(at);
    }

    private boolean take(Event event) {
        switch (event.getEventId()) {
            case DocumentStart -> {
                return ++documents == 1 || stop(event, "A second document begins here.", "Keep one piece to a text.");
            }
            case Scalar, Alias, SequenceStart, MappingStart -> {
                return ++nodes <= MOST_NODES
                        ? begin((NodeEvent) event)
                        : stop(event, "The text says more than (%d) things.".formatted(MOST_NODES), "Split the piece.");
            }
            case SequenceEnd, MappingEnd -> {
                Frame frame = open.pop();
                place(frame.close(places.span(frame.event, event)));
            }
            default -> {}
        }
        return true;
    }

    private boolean begin(NodeEvent event) {
        refuseExtras(event);
        if (event instanceof CollectionStartEvent collection) {
            open.push(new Frame(collection));
            return open.size() <= DEEPEST
                    || stop(event, "This is nested more than (%d) deep.".formatted(DEEPEST), "Say it more simply.");
        }
        if (event instanceof ScalarEvent scalar) {
            place(places.scalar(scalar));
        } else {
            place(new Node.Refused(places.span(event, event)));
        }
        return true;
    }

    private void refuseExtras(NodeEvent event) {
        Span span = places.span(event, event);
        if (event instanceof AliasEvent alias) {
            problems.add(
                    span,
                    "A reference (*%s) is not allowed.".formatted(alias.getAlias()),
                    "Write the value out, or give it a name under \"lengths\".");
        } else if (event.getAnchor().isPresent()) {
            problems.add(
                    span,
                    "An anchor (&%s) is not allowed."
                            .formatted(event.getAnchor().get()),
                    "Give the value a name under \"lengths\" or \"materials\".");
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent collection ? collection.getTag() : Optional.empty();
        tag.ifPresent(word -> problems.add(
                span,
                "A tag (%s) is not allowed.".formatted(Problems.quoted(word)),
                "Leave it out; put a value that begins with ! in quotes."));
    }

    private boolean stop(Event event, String message, String remedy) {
        problems.add(places.span(event, event), message, remedy);
        return false;
    }

    private void place(Node node) {
        if (open.isEmpty()) {
            root = Optional.of(node);
        } else {
            open.peek().add(node, problems);
        }
    }

    /** A list or mapping that is still open. */
    private static final class Frame {
        private final CollectionStartEvent event;
        private final List<Node> items = new ArrayList<>();
        private final List<Node.Entry> entries = new ArrayList<>();
        private final Set<String> keys = new HashSet<>();
        private Optional<Node> key = Optional.empty();

        Frame(CollectionStartEvent event) {
            this.event = event;
        }

        void add(Node node, Problems problems) {
            if (!(event instanceof MappingStartEvent)) {
                items.add(node);
            } else if (key.isEmpty()) {
                key = Optional.of(node);
            } else {
                enter(key.get(), node, problems);
                key = Optional.empty();
            }
        }

        private void enter(Node word, Node value, Problems problems) {
            if (!(word instanceof Node.Scalar scalar)) {
                problems.add(word.span(), "A key must be one word or phrase.", "Write \"key: value\".");
            } else if (keys.add(scalar.text())) {
                entries.add(new Node.Entry(scalar, value));
            } else {
                problems.add(
                        word.span(),
                        "%s is said twice in the same place.".formatted(Problems.quoted(scalar.text())),
                        "Keep one of them.");
            }
        }

        Node close(Span span) {
            return event instanceof MappingStartEvent
                    ? new Node.Fields(List.copyOf(entries), span)
                    : new Node.Items(List.copyOf(items), span);
        }
    }
}
