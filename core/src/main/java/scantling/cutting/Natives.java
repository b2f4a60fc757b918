package scantling.cutting;

import com.google.ortools.Loader;

/** Whether the solvers that are not Java run on this machine. */
public final class Natives {
    /** Tried once; a machine does not change. */
    public static final boolean LOADED = load();

    private Natives() {}

    private static boolean load() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (UnsatisfiedLinkError | RuntimeException notHere) {
            return false;
        }
    }
}
