/**
 * The papers of a job: the job sheet as a page, the packet as PDF, the list of parts as CSV and the plan as JSON. Each
 * is a pure function of one {@link scantling.packet.PacketContent}; dates and numbers of jobs are handed in as text.
 * Nothing here works anything out about the piece, and nothing here knows a file, a clock or a browser.
 */
@NullMarked
package scantling.packet;

import org.jspecify.annotations.NullMarked;
