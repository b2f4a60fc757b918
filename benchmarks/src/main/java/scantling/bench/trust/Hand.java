package scantling.bench.trust;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** A seeded hand that chooses. */
final class Hand {
    private final SplittableRandom random;

    Hand(long seed) {
        this.random = new SplittableRandom(seed);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    @SafeVarargs
    final <T> T one(Supplier<T>... ways) {
        return ways[random.nextInt(ways.length)].get();
    }

    <T> List<T> some(int most, Supplier<T> each) {
        List<T> all = new ArrayList<>();
        int count = random.nextInt(most + 1);
        for (int i = 0; i < count; i++) {
            all.add(each.get());
        }
        return all;
    }

    /** A text with stretches lost, doubled, moved, or taken by something else. */
    String damaged(String text, List<String> tokens) {
        String result = text;
        for (int i = 0; i <= below(3); i++) {
            int at = below(result.length() + 1);
            int to = Math.min(result.length(), at + below(30));
            String middle = switch (below(4)) {
                case 0 -> "";
                case 1 -> of(tokens);
                case 2 -> result.substring(at, to) + result.substring(at, to);
                default -> result.substring(Math.min(at, to / 2), to);
            };
            result = result.substring(0, at) + middle + result.substring(to);
        }
        return result;
    }
}
