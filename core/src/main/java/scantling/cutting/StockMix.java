package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The cheapest whole numbers of each kind of stock that meet every demand: a small integer program, solved by branching on
 * one kind after the other. A demand says: however parts are valued, what fits on the stock is worth at most so much, and
 * the parts together are worth so much more.
 */
final class StockMix {
    private static final int MOST_NODES = 60_000;
    private static final double TINY = 1e-7;

    private final long[] cost;
    private final int[] most;
    private final List<Demand> demands = new ArrayList<>();

    private Integer[] order = {};
    private long best;
    private int[] bestMix = {};
    private int nodes;

    StockMix(long[] cost, int[] most) {
        this.cost = cost;
        this.most = most;
    }

    void demand(Demand demand) {
        demands.add(new Demand(demand.need() * (1 - TINY), demand.value()));
    }

    /** Whether a mix meets a demand. */
    static boolean meets(int[] mix, Demand demand) {
        return demand.held(mix) >= demand.need() * (1 - TINY);
    }

    /** The cheapest mix; empty when there is none, or when it took too long to be sure. */
    int[] cheapest() {
        order = new Integer[cost.length];
        Arrays.setAll(order, t -> t);
        Demand first = demands.get(0);
        Arrays.sort(order, Comparator.comparingDouble(t -> cost[t] / Math.max(TINY, first.value()[t])));
        best = Long.MAX_VALUE;
        bestMix = new int[0];
        nodes = 0;
        branch(0, new int[cost.length], 0);
        return nodes >= MOST_NODES ? new int[0] : bestMix;
    }

    long cost(int[] mix) {
        long sum = 0;
        for (int t = 0; t < mix.length; t++) {
            sum += mix[t] * cost[t];
        }
        return sum;
    }

    private void branch(int at, int[] mix, long paid) {
        if (nodes++ >= MOST_NODES || paid + stillToPay(at, mix) >= best) {
            return;
        }
        if (at == order.length) {
            best = paid;
            bestMix = mix.clone();
            return;
        }
        int t = order[at];
        int enough = enough(t, mix);
        int from = cost[t] == 0 || at == order.length - 1 ? enough : 0;
        for (int many = enough; many >= from; many--) {
            mix[t] = many;
            branch(at + 1, mix, paid + many * cost[t]);
        }
        mix[t] = 0;
    }

    /** So many of a kind meet every demand alone, or as many as there are. */
    private int enough(int t, int[] mix) {
        int many = 0;
        for (Demand demand : demands) {
            double open = open(demand, mix);
            if (open > 0 && demand.value()[t] > 0) {
                many = Math.max(many, (int) Math.min(most[t], Math.ceil(open / demand.value()[t])));
            }
        }
        return many;
    }

    private static double open(Demand demand, int[] mix) {
        return demand.need() - demand.held(mix);
    }

    /** What the demands still open cost at least, fractions of stock allowed; never to be paid when they cannot be met. */
    private double stillToPay(int at, int[] mix) {
        double highest = 0;
        for (Demand demand : demands) {
            double open = open(demand, mix);
            if (open > TINY) {
                double price = price(demand, at, open);
                highest = Math.max(highest, price);
            }
        }
        return highest == 0 ? 0 : Math.ceil(highest - 1e-6);
    }

    private double price(Demand demand, int at, double open) {
        double least = Double.MAX_VALUE;
        double supply = 0;
        for (int k = at; k < order.length; k++) {
            int t = order[k];
            double value = demand.value()[t];
            if (value > 0) {
                least = Math.min(least, cost[t] / value);
                supply += value * (double) most[t];
            }
        }
        return supply < open ? Double.MAX_VALUE / 4 : open * least;
    }
}
