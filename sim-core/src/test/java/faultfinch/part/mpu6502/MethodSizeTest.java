package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * HotSpot never compiles a method of more than 8000 bytecodes, and says nothing: 14 times slower.
 */
class MethodSizeTest {

  private static final Path CLASSES = Path.of("target/classes/faultfinch/part/mpu6502");
  private static final int MOST_BYTECODES = 8000;

  private record Method(String name, long bytecodes) {}

  @Test
  void methods_ofThePackage_areSmallEnoughToBeCompiled() throws IOException {
    List<Method> methods = new ArrayList<>();
    try (Stream<Path> files = Files.list(CLASSES)) {
      files.filter(file -> file.toString().endsWith(".class")).forEach(f -> addMethods(f, methods));
    }
    assertTrue(
        methods.stream().anyMatch(m -> m.name().equals("Mpu6502.class run") && m.bytecodes() > 300),
        "the reader must see the main loop, found " + methods);
    for (Method method : methods) {
      assertTrue(method.bytecodes() <= MOST_BYTECODES, method.toString());
    }
  }

  // A class file: magic, version, constants, then three numbers, interfaces, fields, methods.
  private static void addMethods(Path file, List<Method> methods) {
    try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
      in.skipNBytes(8);
      Map<Integer, String> names = names(in);
      in.skipNBytes(6);
      in.skipNBytes(2L * in.readUnsignedShort());
      for (int fields = in.readUnsignedShort(); fields > 0; fields--) {
        in.skipNBytes(6);
        codeLength(in, names);
      }
      for (int count = in.readUnsignedShort(); count > 0; count--) {
        in.skipNBytes(2);
        String name = file.getFileName() + " " + names.get(in.readUnsignedShort());
        in.skipNBytes(2);
        methods.add(new Method(name, codeLength(in, names)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<Integer, String> names(DataInputStream in) throws IOException {
    Map<Integer, String> names = new HashMap<>();
    int count = in.readUnsignedShort();
    for (int index = 1; index < count; index++) {
      int tag = in.readUnsignedByte();
      switch (tag) {
        case 1 -> names.put(index, in.readUTF());
        case 5, 6 -> { // long and double take two places
          in.skipNBytes(8);
          index++;
        }
        case 7, 8, 16, 19, 20 -> in.skipNBytes(2);
        case 15 -> in.skipNBytes(3);
        case 3, 4, 9, 10, 11, 12, 17, 18 -> in.skipNBytes(4);
        default -> throw new IOException("unknown constant tag " + tag);
      }
    }
    return names;
  }

  // Reads all attributes; the length is that of the one named Code, after its two stack sizes.
  private static long codeLength(DataInputStream in, Map<Integer, String> names)
      throws IOException {
    long codeLength = 0;
    for (int count = in.readUnsignedShort(); count > 0; count--) {
      boolean code = "Code".equals(names.get(in.readUnsignedShort()));
      long length = in.readInt() & 0xFFFFFFFFL;
      if (code) {
        in.skipNBytes(4);
        codeLength = in.readInt() & 0xFFFFFFFFL;
        in.skipNBytes(length - 8);
      } else {
        in.skipNBytes(length);
      }
    }
    return codeLength;
  }
}
