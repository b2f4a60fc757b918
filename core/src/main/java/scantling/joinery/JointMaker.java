package scantling.joinery;

/** Makes one kind of joint. */
interface JointMaker {
    /** Puts its features, its reasons and its findings on the bench. */
    void make(Meeting at, Bench bench);
}
