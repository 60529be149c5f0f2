package faultfinch.board;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** A drive that speaks Tamarisk's link in whole bytes. */
final class TamariskDrive {
  final Map<String, byte[]> files = new LinkedHashMap<>();
  boolean there = true;

  private final Deque<Integer> answer = new ArrayDeque<>();
  private final StringBuilder taken = new StringBuilder();
  private int command;

  boolean takes() {
    return there;
  }

  boolean gives() {
    return there && !answer.isEmpty();
  }

  int give() {
    return answer.removeFirst();
  }

  void take(int value, boolean attention) {
    if (attention) {
      command = value;
      taken.setLength(0);
      answer.clear();
      if (command == 0x40) {
        answer.add(0x5A);
      } else if (command == 0x41) {
        files.keySet().forEach(name -> (name + "\r").chars().forEach(answer::add));
        answer.add(0);
      }
      return;
    }
    taken.append((char) value);
    int end = taken.indexOf("\r");
    if (end < 0) {
      return;
    }
    String name = taken.substring(0, end);
    if (command == 0x42) {
      byte[] bytes = files.getOrDefault(name, new byte[0]);
      answer.add(bytes.length & 0xFF);
      answer.add(bytes.length >> 8);
      for (byte b : bytes) {
        answer.add(b & 0xFF);
      }
    } else if (command == 0x43 && taken.length() >= end + 3) {
      int length = taken.charAt(end + 1) | taken.charAt(end + 2) << 8;
      if (taken.length() == end + 3 + length) {
        files.put(name, taken.substring(end + 3).getBytes(StandardCharsets.ISO_8859_1));
        answer.add(0);
      }
    }
  }
}
