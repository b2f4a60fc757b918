package scantling.finishing;

/** What to mind at a step, and who says so. @param says a sentence or two @param source who says so */
public record Caution(String says, String source) {}
