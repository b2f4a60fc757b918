/**
 * Turns fittings into work on parts: holes for slides, hinges, pins and screws, notches and recesses, each measured from
 * the marks of the part it is in, with why it is so and what stands against it. What a fitting asks for comes from the
 * shop's {@link scantling.stock.HardwareProfiles}; where it goes comes from the assembly. Knows nothing of joints between
 * wooden parts, which joinery cuts, nor of drawings.
 */
@NullMarked
package scantling.hardware;

import org.jspecify.annotations.NullMarked;
