/**
 * Drawings of an assembly, its parts and its cuts: views, a section, an exploded view, one sheet per part, cutting
 * diagrams. Every drawing knows its scale and prints true to it; every figure knows the number it shows. Drawings read
 * assemblies and lengths; they decide nothing and know no paper, page or browser.
 */
@NullMarked
package scantling.drawing;

import org.jspecify.annotations.NullMarked;
