package scantling.finishing;

import scantling.measure.Span;

/**
 * One step of a finish as understood.
 *
 * @param key what the maker calls the step
 * @param coat what goes on
 * @param times how many coats
 * @param method how
 * @param thinned parts of thinner to one of the coat
 * @param after least hours since what was before, as the maker says; zero when nothing is said
 * @param span where it is said
 */
record Applied(String key, Coat coat, int times, Method method, double thinned, double after, Span span) {}
