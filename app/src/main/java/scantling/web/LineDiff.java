package scantling.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Two texts line by line, what both have in common kept together (longest common subsequence, Wagner and Fischer 1974). */
public final class LineDiff {
    /** Beyond this many lines a side, texts are shown one after the other; no piece comes near it. */
    private static final int MOST = 2_000;

    private LineDiff() {}

    /** A line. @param left as it stood; empty when it is new @param right as it stands @param kind same, gone, new */
    public record Line(String left, String right, String kind) {}

    /** All lines of both, in order. */
    static List<Line> of(String before, String after) {
        List<String> left = before.lines().toList();
        List<String> right = after.lines().toList();
        if (left.size() > MOST || right.size() > MOST) {
            List<Line> all = new ArrayList<>();
            left.forEach(line -> all.add(gone(line)));
            right.forEach(line -> all.add(added(line)));
            return all;
        }
        return walked(left, right, common(left, right));
    }

    private static Line gone(String line) {
        return new Line(line, "", "gone");
    }

    private static Line added(String line) {
        return new Line("", line, "new");
    }

    /** How many lines the beginnings of both have in common, for each pair of lengths. */
    private static int[][] common(List<String> left, List<String> right) {
        int[][] common = new int[left.size() + 1][right.size() + 1];
        for (int i = 1; i <= left.size(); i++) {
            for (int j = 1; j <= right.size(); j++) {
                common[i][j] = left.get(i - 1).equals(right.get(j - 1))
                        ? common[i - 1][j - 1] + 1
                        : Math.max(common[i - 1][j], common[i][j - 1]);
            }
        }
        return common;
    }

    private static List<Line> walked(List<String> left, List<String> right, int[][] common) {
        List<Line> lines = new ArrayList<>();
        int i = left.size();
        int j = right.size();
        while (i > 0 || j > 0) {
            if (i > 0 && j > 0 && left.get(i - 1).equals(right.get(j - 1))) {
                i--;
                j--;
                lines.add(new Line(left.get(i), right.get(j), "same"));
            } else if (j > 0 && (i == 0 || common[i][j - 1] >= common[i - 1][j])) {
                j--;
                lines.add(added(right.get(j)));
            } else {
                i--;
                lines.add(gone(left.get(i)));
            }
        }
        Collections.reverse(lines);
        return lines;
    }
}
