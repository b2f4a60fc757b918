package scantling.pricing;

/**
 * One line of a cost sheet.
 *
 * @param section what kind of cost
 * @param what what it is for
 * @param quantity how much of it, in words
 * @param cost what it costs
 * @param source where price or time come from
 */
public record Line(Section section, String what, String quantity, Spread cost, String source) {
    /** Kinds of cost, in the order they are told. */
    public enum Section {
        /** Boards, sheets, sticks. */
        MATERIALS("materials"),
        /** Slides, hinges, handles. */
        HARDWARE("hardware"),
        /** Glue, biscuits, abrasives. */
        CONSUMABLES("consumables"),
        /** Stain, sealer, topcoat. */
        FINISH("finish"),
        /** Hands. */
        LABOUR("labour"),
        /** Machines recovered. */
        MACHINES("machines"),
        /** Rent, light, insurance, the hours nobody pays. */
        OVERHEAD("overhead"),
        /** Taking it there. */
        DELIVERY("delivery"),
        /** What goes wrong. */
        RISK("risk");

        private final String word;

        Section(String word) {
            this.word = word;
        }

        /** For people. */
        public String word() {
            return word;
        }

        /** Whether it is bought for the piece. */
        boolean isBought() {
            return ordinal() <= FINISH.ordinal();
        }
    }
}
