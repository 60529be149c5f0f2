package faultfinch.part;

import faultfinch.signal.Pinout;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Every part number a board may use, processors first, then memories, logic, devices, passives. */
public enum PartCatalog {
  M6502("6502", new M6502()),
  EPROM_2764("2764", new Eprom2764()),
  SRAM_6116("6116", new Sram6116()),
  DRAM_4164("4164", new Dram4164()),
  LS_00("74LS00", new Ls00()),
  LS_02("74LS02", new Ls02()),
  LS_04("74LS04", new Ls04()),
  LS_06("74LS06", new Ls06()),
  LS_08("74LS08", new Ls08()),
  LS_10("74LS10", new Ls10()),
  LS_20("74LS20", new Ls20()),
  LS_32("74LS32", new Ls32()),
  LS_74("74LS74", new Ls74()),
  LS_86("74LS86", new Ls86()),
  LS_138("74LS138", new Ls138()),
  LS_145("74LS145", new Ls145()),
  LS_157("74LS157", new Ls157()),
  LS_244("74LS244", new Ls244()),
  LS_245("74LS245", new Ls245()),
  LS_257("74LS257", new Ls257()),
  LS_259("74LS259", new Ls259()),
  LS_373("74LS373", new Ls373()),
  LS_374("74LS374", new Ls374()),
  LS_393("74LS393", new Ls393()),
  SWITCH_4066("4066", new Switch4066()),
  TIMER_555("555", new Timer555()),
  OSCILLATOR("OSC", new Oscillator()),
  STROBES("STROBES", new Strobes()),
  PORT_TIMER("IOC", new PortTimer()),
  CHAR_DISPLAY("DISPLAY", new CharDisplay()),
  VIDEO_CONTROLLER("VIDEO", new VideoController()),
  ATTRIBUTE_MEMORY("ATTRIB", new AttributeMemory()),
  DOT_SHIFTER("SHIFTER", new DotShifter()),
  MONITOR("MONITOR", new Monitor()),
  TONE_GENERATOR("TONE", new ToneGenerator()),
  LINK_CONTROLLER("LINKC", new LinkController()),
  DRIVE("DRIVE", new Drive()),
  TAPE_RECORDER("TAPE", new TapeRecorder()),
  DUAL_AMPLIFIER("OPAMP2", new DualAmplifier()),
  RESISTOR("R", passive(Element.Kind.RESISTOR, "1", "2")),
  RESISTOR_PACK(
      "RPACK8", passive(Element.Kind.PACK, "COM", "1", "2", "3", "4", "5", "6", "7", "8")),
  POTENTIOMETER("POT", passive(Element.Kind.POTENTIOMETER, "1", "2", "3")),
  CAPACITOR("C", passive(Element.Kind.CAPACITOR, "1", "2")),
  ELECTROLYTIC("CPOL", passive(Element.Kind.CAPACITOR, "+", "-")),
  DIODE("D", passive(Element.Kind.DIODE, "A", "K")),
  LED("LED", passive(Element.Kind.DIODE, "A", "K")),
  FUSE("FUSE", passive(Element.Kind.FUSE, "1", "2")),
  KEY("KEY", passive(Element.Kind.SWITCH, "1", "2")),
  LINK("LINK", passive(Element.Kind.SWITCH, "1", "2")),
  BEEPER("BEEPER", passive(Element.Kind.SOUNDER, "1", "2")),
  SPEAKER("SPEAKER", passive(Element.Kind.SOUNDER, "1", "2")),
  EXPANSION(
      "EXPANSION",
      passive(
          Element.Kind.CONNECTOR,
          ("A0 A1 A2 A3 A4 A5 A6 A7 A8 A9 A10 A11 A12 A13 A14 A15 D0 D1 D2 D3 D4 D5 D6 D7 RW PHI2"
                  + " RES/ IRQ/ NMI/ RDY XTAKE/ X5/ X6/ X7/ XQ7 5V 12V GND")
              .split(" "))),
  SOUND_SOCKET("SOUND", passive(Element.Kind.CONNECTOR, "OUT", "MIX", "GND")),
  SIDE_PORT(
      "SIDE",
      passive(Element.Kind.CONNECTOR, "SP0 SP1 SP2 SP3 SP4 SP5 SP6 SP7 LK5 GND".split(" "))),
  REGULATOR_7805("7805", passive(Element.Kind.REGULATOR, "IN", "GND", "OUT")),
  JACK("JACK", passive(Element.Kind.JACK, "+", "-"));

  private static final Map<String, PartCatalog> BY_TYPE = new HashMap<>();

  static {
    for (PartCatalog part : values()) {
      BY_TYPE.put(part.type, part);
    }
  }

  private static final Set<PartCatalog> CUSTOM =
      EnumSet.of(
          STROBES,
          PORT_TIMER,
          CHAR_DISPLAY,
          VIDEO_CONTROLLER,
          ATTRIBUTE_MEMORY,
          DOT_SHIFTER,
          TONE_GENERATOR,
          LINK_CONTROLLER);

  private final String type;
  private final Part part;

  PartCatalog(String type, Part part) {
    this.type = type;
    this.part = part;
  }

  /** The part number as a board file writes it. */
  public String type() {
    return type;
  }

  /** The behaviour of this part number. */
  public Part part() {
    return part;
  }

  /** Whether it is made for one board only and can be had nowhere else. */
  public boolean custom() {
    return CUSTOM.contains(this);
  }

  /** The row of a part number, if the catalogue has it. */
  public static Optional<PartCatalog> named(String type) {
    return Optional.ofNullable(BY_TYPE.get(type));
  }

  private static Element passive(Element.Kind kind, String... pins) {
    StringBuilder drawing = new StringBuilder("+--+\n");
    for (int i = 0; i < pins.length; i++) {
      drawing.append(pins[i]).append(" --|").append(i + 1).append(" |\n");
    }
    drawing.append("+--+\npassive; terminal ").append(String.join(" ", pins)).append("\n");
    return new Element(kind, Pinout.drawn(drawing + "Not modelled: see the board's power model."));
  }
}
