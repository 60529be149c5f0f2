package faultfinch.board;

import java.util.List;

/**
 * A module for a board's expansion port whose ROM answers in place of the board's own and says in
 * sentences what the board gave back.
 *
 * @param plug the module
 * @param returnLeads what joins two ports for the stations that look at ports
 * @param milestones of its program
 * @param reportMilliseconds when its first report stands complete on a healthy board, and the lamp
 *     is about to pulse; since power-on
 */
public record BenchRom(
    Plug plug, List<Contact> returnLeads, List<Milestone> milestones, int reportMilliseconds) {
  public BenchRom {
    returnLeads = List.copyOf(returnLeads);
    milestones = List.copyOf(milestones);
  }
}
