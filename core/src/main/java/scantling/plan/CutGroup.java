package scantling.plan;

import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.piece.Material;

/**
 * One saw plan of a piece.
 *
 * @param title what is cut, for people: {@code cherry, 5/4 boards}
 * @param material of what
 * @param job what was asked
 * @param plan what to cut
 */
public record CutGroup(String title, Material material, CutJob job, CutPlan plan) {}
