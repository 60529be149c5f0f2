package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import faultfinch.signal.Technology;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pin assignment of the data sheet. */
class Switch4066Test {

  @Test
  void controls_eachSwitch_sitOnThePinsOfTheDataSheet() {
    Switch4066 part = new Switch4066();
    Pinout pinout = part.pinout();
    List<List<Integer>> numbers =
        part.controls().stream()
            .map(
                way ->
                    Stream.of(way.a(), way.b(), way.control())
                        .map(name -> pinout.find(name).orElseThrow().number())
                        .toList())
            .toList();
    assertEquals(
        List.of(List.of(1, 2, 13), List.of(4, 3, 5), List.of(8, 9, 6), List.of(11, 10, 12)),
        numbers);
  }

  @Test
  void terminals_andControls_haveTheirRoles() {
    Switch4066 part = new Switch4066();
    for (Switch4066.Way way : part.controls()) {
      assertEquals(Pin.Role.TERMINAL, part.pinout().find(way.a()).orElseThrow().role());
      assertEquals(Pin.Role.TERMINAL, part.pinout().find(way.b()).orElseThrow().role());
      Pin control = part.pinout().find(way.control()).orElseThrow();
      assertEquals(Pin.Role.INPUT, control.role());
      assertEquals(Technology.CMOS, control.technology());
    }
  }
}
