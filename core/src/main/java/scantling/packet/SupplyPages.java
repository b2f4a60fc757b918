package scantling.packet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.finishing.FinishPlan;

/**
 * What the templates ask about buying and finishing.
 *
 * @param buying the buying list by kind
 * @param finish the finish, group by group
 * @param totals what all groups together take of each coat
 * @param trials what to try on the test board
 */
public record SupplyPages(
        Map<String, List<BuyRow>> buying,
        List<FinishPages.Group> finish,
        List<FinishPages.Total> totals,
        List<FinishPlan.Trial> trials) {
    static SupplyPages of(PacketContent content, Map<String, String> marks) {
        return new SupplyPages(
                content.buying().stream()
                        .collect(Collectors.groupingBy(BuyRow::kind, LinkedHashMap::new, Collectors.toList())),
                FinishPages.of(content.finish(), content.format(), marks),
                FinishPages.totals(content.finish(), content.format()),
                content.finish().testBoard());
    }
}
