package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.board.Track;
import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A board small enough to count on paper, with a site for every kind of fault. */
final class TestBoards {
  private TestBoards() {}

  /** Of its tracks only two are laid, 0.4 mm apart. */
  static Board small() {
    Board board = unlaid();
    Track one = across(board, "A0", 0);
    Track other = across(board, "A1", 0.7); // 0.3 mm of copper, 0.4 of board
    return board.laid(List.of(one, other));
  }

  private static Track across(Board board, String net, double y) {
    return new Track(
        net,
        board.net(net).orElseThrow().segments().get(0),
        0.3,
        List.of(new Track.Leg(Track.Side.PARTS, 0, y, 20, y)));
  }

  private static Board unlaid() {
    List<PlacedPart> parts =
        List.of(
            part("J1", "JACK", false, "", "connector"),
            part("F1", "FUSE", false, "1A", "clock"),
            part("D1", "D", false, "", "passive"),
            part("VR1", "7805", false, "", "regulator"),
            part("C1", "CPOL", false, "1000u", "electrolytic"),
            part("C3", "C", false, "100n", "ceramic"),
            part("X1", "OSC", false, "", "clock"),
            part("U1", "6502", true, "", "CPU"),
            part("U2", "2764", true, "", "EPROM"),
            part("U3", "6116", true, "", "SRAM"),
            part("U4", "74LS138", false, "", "LS"),
            part("U5", "74LS00", false, "", "LS"),
            part("U8", "IOC", true, "", "LSI"),
            part("U9", "4164", true, "", "DRAM"),
            part("R2", "R", false, "100", "passive"),
            part("RN1", "RPACK8", false, "4k7", "passive"),
            part("K1", "KEY", false, "", "connector"),
            part("J2", "LINK", false, "", "connector"),
            part("LED1", "LED", false, "", "passive"),
            part("LS1", "BEEPER", false, "", "passive"));
    List<Net> nets =
        List.of(
            net("9V", "J1.+ F1.1"),
            net("FUSED", "F1.2 D1.A"),
            net("RAW", "D1.K C1.+ VR1.IN"),
            net(
                "5V",
                "VR1.OUT C3.1 X1.VCC U1.VCC U2.VCC U3.VCC U4.VCC U4.G1 U5.VCC U8.VCC U9.VCC U8.CS"
                    + " RN1.COM LED1.A"),
            net(
                "GND",
                "J1.- C1.- VR1.GND C3.2 X1.GND U1.VSS1 U1.VSS2 U2.GND U3.GND U4.GND U4.G2A/"
                    + " U4.G2B/ U5.GND U8.GND U9.GND K1.2 J2.2 LS1.2"),
            net("CLK", "X1.OUT U1.PHI0"),
            net("D0", "U1.D0 U2.D0 U3.D0 U8.D0"),
            net("D1", "U1.D1 U2.D1 U3.D1 U8.D1"),
            net("A0", "U1.A0 U2.A0 U3.A0 U8.A0"),
            net("A1", "U1.A1 U2.A1 U3.A1 U8.A1"),
            net("A13", "U1.A13 U4.A"),
            net("A14", "U1.A14 U4.B"),
            net("A15", "U1.A15 U4.C"),
            net("Y0/", "U4.Y0/ U3.CE/"),
            net("Y1/", "U4.Y1/ U8.CS/"),
            net("Y7/", "U4.Y7/ U2.CE/"),
            net("RW", "U1.RW U5.1A U5.1B U8.RW"),
            net("RWN", "U5.1Y U5.2A"),
            net("PHI2", "U1.PHI2 U5.2B U8.PHI2"),
            net("WE/", "U5.2Y U3.WE/"),
            net("IRQ/", "U8.IRQ/ U1.IRQ/ RN1.1"),
            net("KEY1", "K1.1 U8.PA2 RN1.2"),
            net("LINK", "J2.1 U8.PA3 RN1.3"),
            net("TO", "U8.TO R2.1"),
            net("SPK", "R2.2 LS1.1"),
            net("LAMP", "U8.PA0 LED1.K"));
    return new Board(
        "small",
        "Small",
        "us",
        "for tests",
        2_000_000,
        "X1",
        List.of(100, 100, 50, 100, 100, 50),
        100,
        80,
        parts,
        nets,
        new Supply(11_500, 3_000, "9V", "J1", "5V", "VR1", "GND"),
        List.of(new Firmware("U2", image(), Map.of())),
        List.of(),
        List.of(),
        List.of(),
        "",
        List.of(),
        4700,
        List.of(),
        Board.USUALLY_READY_MS,
        Optional.empty(),
        List.of(),
        Map.of(),
        "");
  }

  /** Erased but for one byte in each of pages 0, 3 and 31. */
  private static byte[] image() {
    byte[] image = new byte[8192];
    Arrays.fill(image, (byte) 0xFF);
    image[0x0007] = (byte) 0xA9;
    image[0x0310] = 0x60;
    image[0x1FFC] = 0x00;
    return image;
  }

  private static PlacedPart part(
      String ref, String type, boolean socketed, String value, String share) {
    return new PlacedPart(
        ref, PartCatalog.named(type).orElseThrow(), ref, 0, 0, 0, socketed, value, share);
  }

  private static Net net(String name, String track) {
    List<Pad> pads =
        Arrays.stream(track.split(" "))
            .map(p -> new Pad(p.substring(0, p.indexOf('.')), p.substring(p.indexOf('.') + 1)))
            .toList();
    List<Net.Segment> segments = new ArrayList<>();
    for (int i = 1; i < pads.size(); i++) {
      segments.add(new Net.Segment(pads.get(i - 1), pads.get(i)));
    }
    return new Net(name, pads, segments);
  }
}
