package scantling.measure;

import java.util.ArrayList;
import java.util.List;

/** Terms of a sum while it is put together: sums inside are opened, like terms collected. */
final class Terms {
    private final List<Making.Sum.Term> terms = new ArrayList<>();

    /** The terms of a sum are unlike each other already. */
    Terms(long times, Dim dim) {
        if (dim.making() instanceof Making.Sum sum) {
            sum.terms()
                    .forEach(inner ->
                            terms.add(new Making.Sum.Term(Math.multiplyExact(times, inner.times()), inner.dim())));
        } else {
            terms.add(new Making.Sum.Term(times, dim));
        }
    }

    Terms add(long times, Dim dim) {
        if (dim.making() instanceof Making.Sum sum) {
            for (Making.Sum.Term inner : sum.terms()) {
                collect(Math.multiplyExact(times, inner.times()), inner.dim());
            }
        } else {
            collect(times, dim);
        }
        return this;
    }

    private void collect(long times, Dim dim) {
        for (int i = 0; i < terms.size(); i++) {
            Making.Sum.Term term = terms.get(i);
            if (term.dim().sameSourceAs(dim)) {
                terms.set(i, new Making.Sum.Term(Math.addExact(term.times(), times), term.dim()));
                return;
            }
        }
        terms.add(new Making.Sum.Term(times, dim));
    }

    List<Making.Sum.Term> list() {
        for (int i = terms.size() - 1; i >= 0; i--) {
            if (terms.get(i).times() == 0) {
                terms.remove(i);
            }
        }
        return terms;
    }
}
