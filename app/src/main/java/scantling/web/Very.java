package scantling.web;

import java.lang.ref.WeakReference;

/** Something by being the very one, not one like it; does not keep it. Once it is gone this is like nothing but itself. */
final class Very {
    private final WeakReference<Object> one;
    private final int hash;

    Very(Object one) {
        this.one = new WeakReference<>(one);
        this.hash = System.identityHashCode(one);
    }

    @Override
    public boolean equals(Object other) {
        if (this == other) {
            return true;
        }
        Object mine = one.get();
        return mine != null && other instanceof Very very && very.one.refersTo(mine);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
