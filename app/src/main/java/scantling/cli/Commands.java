package scantling.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/** The commands by their names, in the order in which help lists them. */
final class Commands {
    private static final Map<String, Supplier<Object>> ALL = all();

    private Commands() {}

    private static Map<String, Supplier<Object>> all() {
        Map<String, Supplier<Object>> all = new LinkedHashMap<>();
        all.put("new", NewCommand::new);
        all.put("plan", PlanCommand::new);
        all.put("price", PriceCommand::new);
        all.put("packet", PacketCommand::new);
        all.put("check", CheckCommand::new);
        all.put("explain", ExplainCommand::new);
        all.put("finish", FinishCommand::new);
        all.put("edit", EditCommand::new);
        all.put("cut", CutCommand::new);
        all.put("route", RouteCommand::new);
        all.put("days", DaysCommand::new);
        all.put("today", TodayCommand::new);
        all.put("shop", ShopCommand::new);
        all.put("serve", ServeCommand::new);
        all.put("elements", ElementsCommand::new);
        all.put("schema", SchemaCommand::new);
        return all;
    }

    /** What they are called. */
    static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    /**
     * Makes commands known. Taking every command apart costs a fifth of a second, which a maker who names one need not
     * wait for: then only that one is.
     */
    static void addTo(CommandLine line, String... args) {
        if (args.length > 0 && ALL.containsKey(args[0])) {
            line.addSubcommand(args[0], ALL.get(args[0]).get());
            return;
        }
        ALL.forEach((name, command) -> line.addSubcommand(name, command.get()));
    }
}
