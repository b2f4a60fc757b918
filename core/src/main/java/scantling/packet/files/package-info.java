/**
 * A piece in the open formats of other programs. Knows the packet's content and nothing of paper; writes text and bytes, never
 * files.
 */
@NullMarked
package scantling.packet.files;

import org.jspecify.annotations.NullMarked;
