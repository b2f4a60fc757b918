package scantling.route.schedule;

import com.google.ortools.Loader;

/** Whether the constraint solver, which is not Java, runs on this machine. */
final class Natives {
    /** Tried once; a machine does not change. */
    static final boolean LOADED = load();

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
