package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Pin;

/**
 * Who, in an access, acts on what he reads on a net: a data pin of a part that is neither written
 * nor passes on what it reads is read by nobody; nor is an address by a memory that only strobes a
 * row of it, where no row needs a clock.
 */
final class Actors {
  private final Circuit c;
  private final Levels levels;

  Actors(Levels levels) {
    this.c = levels.circuit;
    this.levels = levels;
  }

  /** Whether anybody acts on what a net carries in this access. */
  boolean any(int net, Trial access) {
    return among(new boolean[c.parts.length], net, access);
  }

  /** The same, but for the parts of the clockwork, which go their own way. */
  boolean outside(Clockwork clockwork, int net, Trial access) {
    return among(clockwork.parts, net, access);
  }

  private boolean among(boolean[] others, int net, Trial access) {
    if (c.groupOf[net] >= 0) {
      return Reach.isRead(c, net);
    }
    for (int g : c.receivers[net]) {
      boolean looks = (c.readMask[c.partOf[g]] >>> c.bitOf[g] & 1) == 0;
      if (looks && !others[c.partOf[g]] && c.alive[c.partOf[g]] && acts(g, access)) {
        return true;
      }
    }
    return false;
  }

  private boolean acts(int g, Trial access) {
    int p = c.partOf[g];
    Pin pin = c.parts[p].pinout().pins().get(c.bitOf[g]);
    if (c.parts[p] instanceof RowMemory row && (row.address().mask() & pin.mask()) != 0) {
      return access.drivenLate[p] != 0 || stores(p, access) || !refreshed(p, row);
    }
    if (p == c.cpu || pin.role() != Pin.Role.DATA) {
      return true;
    }
    for (int node : c.followers[g]) {
      if ((access.everDriven[p] & c.nodePins[node]) != 0) {
        return true;
      }
    }
    if (c.parts[p] instanceof BusDevice) {
      return written(p, access.in[p]);
    }
    boolean memory = c.parts[p] instanceof Memory || c.parts[p] instanceof RowMemory;
    return memory ? stores(p, access) : Clockwork.stores(c, p);
  }

  private boolean refreshed(int p, RowMemory memory) {
    boolean refreshed = true;
    for (int row = 0; row < 1 << memory.address().width(); row++) {
      refreshed &= levels.pins[p].refreshed(row);
    }
    return refreshed;
  }

  /** Whether the pins by which the processor gets at a part's registers say that it writes. */
  private boolean written(int p, long in) {
    for (Pin pin : c.parts[p].pinout().pins()) {
      boolean high = (in & pin.mask()) != 0;
      boolean away = pin.role() == Pin.Role.SELECT && high == pin.activeLow();
      if (away || pin.role() == Pin.Role.DIRECTION && high) {
        return false;
      }
    }
    return true;
  }

  private boolean stores(int p, Trial access) {
    for (int step = 0; step < access.steps.size(); step++) {
      if (access.part(step) == p) {
        return true;
      }
    }
    return false;
  }
}
