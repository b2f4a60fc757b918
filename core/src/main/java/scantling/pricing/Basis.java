package scantling.pricing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import scantling.construct.Assembly;
import scantling.cutting.CutPlan;
import scantling.feature.Features;
import scantling.finishing.FinishPlan;
import scantling.measure.Length;
import scantling.piece.Material;
import scantling.stock.RoughClass;

/**
 * What a price rests on.
 *
 * @param assembly the piece
 * @param features what joints and hardware take from it: how many biscuits and dowels
 * @param sawn what is bought and sawn
 * @param finish what goes on it
 * @param work hours by class
 * @param days from the first stroke to the last by the calendar, with nothing else in hand; nights, pauses and days off
 *     included; nothing when nobody has put it in time
 */
public record Basis(
        Assembly assembly, Features features, List<Sawn> sawn, FinishPlan finish, Work work, OptionalDouble days) {
    /** Takes its own copy. */
    public Basis {
        sawn = List.copyOf(sawn);
    }

    /**
     * Stock of one kind with its saw plan.
     *
     * @param title for people
     * @param material of what
     * @param plan the plan
     * @param rough the class of rough boards; nothing for sheets and sticks
     * @param ends what is trimmed off a board's ends before the plan begins, both together
     */
    public record Sawn(String title, Material material, CutPlan plan, Optional<RoughClass> rough, Length ends) {}
}
