package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The outlook of one who takes everything at its word: what does not agree is out. */
record TakenAtWord(Field field) implements Outlook {

  @Override
  public boolean isEmpty() {
    return field.isEmpty();
  }

  @Override
  public Choice choose(Planner planner) {
    return planner.choose(field);
  }

  @Override
  public Outlook seen(String look, String outcome) {
    return new TakenAtWord(field.seen(look, outcome));
  }

  @Override
  public Outlook missed(RepairAction action) {
    return new TakenAtWord(field.missed(action));
  }

  @Override
  public List<Due> due() {
    double all = weight();
    List<Due> due = new ArrayList<>();
    for (int member : field.members()) {
      Ground.Atom atom = field.ground().atoms()[member];
      due.add(new Due(field.ground().actions().get(atom.own()), atom.weight() / all));
    }
    return Outlook.ranked(due);
  }

  @Override
  public double cureChance(RepairAction action) {
    int index = field.ground().actions().indexOf(action);
    double cured = 0;
    for (int member : field.members()) {
      Ground.Atom atom = field.ground().atoms()[member];
      cured += Arrays.binarySearch(atom.cures(), index) >= 0 ? atom.weight() : 0;
    }
    return cured / weight();
  }

  @Override
  public double outside() {
    return field.isEmpty() ? 1 : 0;
  }

  private double weight() {
    return Arrays.stream(field.members())
        .mapToDouble(m -> field.ground().atoms()[m].weight())
        .sum();
  }
}
