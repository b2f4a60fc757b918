package scantling.shop;

import java.time.LocalDate;
import java.util.Optional;

/** Something the maker does that changes what the shop knows. Each can be taken back. */
public sealed interface Act {
    /** A new job, in hand, with its first text. The shop names it after its title. @param client id, or empty */
    record AddJob(String title, String client, Optional<LocalDate> due, String text) implements Act {}

    /** Title, client, date, price or state of a job; its revision is not looked at. */
    record ChangeJob(Job job) implements Act {}

    /**
     * Another text for a piece.
     *
     * @param onRevision number of the revision it was made from; it must still be the one that counts
     * @param text the whole text, which must read
     * @param words what was changed, for people; may be empty
     */
    record EditText(String job, int onRevision, String text, String words) implements Act {}

    /** A new client; the shop names it when its id is empty. */
    record AddClient(Client client) implements Act {}

    /** Name, contact or note of a client. */
    record ChangeClient(Client client) implements Act {}

    /** A piece of stock comes into the rack. Its id must be free. */
    record PutOnRack(OnHand piece) implements Act {}

    /** Size, price or place of a piece in the rack. */
    record ChangeOnRack(OnHand piece) implements Act {}

    /** A piece leaves the rack otherwise than through the saw. @param why may be empty */
    record TakeOffRack(String id, String why) implements Act {}

    /** Hardware or finish on hand, new or changed. */
    record PutSupply(Supply supply) implements Act {}

    /** No more of it. */
    record TakeSupply(String id) implements Act {}

    /** A setting of the shop; an empty value puts back what is usual. */
    record Set(Setting setting) implements Act {}

    /** Something happened at the bench. */
    record Log(String job, BenchEntry entry) implements Act {}

    /** Takes an act back. @param act its id */
    record Undo(String act) implements Act {}

    /** Does again what was taken back. @param act its id */
    record Redo(String act) implements Act {}
}
