package scantling.route;

/** Something used up. @param name what @param amount how much @param unit of what @param source who says how much */
public record Supply(String name, double amount, String unit, String source) {}
