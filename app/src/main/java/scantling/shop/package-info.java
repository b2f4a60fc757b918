/**
 * The shop's memory: one SQLite file in the maker's folder with jobs, every revision of their texts, the rack, the bench
 * log, settings and paired devices, and the journal of acts that changed them. Nothing derived is kept; plans are worked
 * out by {@link scantling.plan.Planner} from what is here. It knows nothing of pages or commands and may use the library
 * below it, but neither {@code web} nor {@code cli}.
 */
@NullMarked
package scantling.shop;

import org.jspecify.annotations.NullMarked;
