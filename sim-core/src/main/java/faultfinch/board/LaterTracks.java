package faultfinch.board;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Tracks that are read when somebody asks for the first of them: most commands ask for none, and a
 * board has hundreds.
 */
final class LaterTracks extends AbstractList<Track> {
  private Supplier<List<Track>> reading;
  private volatile List<Track> read = List.of();
  private volatile boolean isRead;

  LaterTracks(Supplier<List<Track>> reading) {
    this.reading = reading;
  }

  @Override
  public Track get(int index) {
    return tracks().get(index);
  }

  @Override
  public int size() {
    return tracks().size();
  }

  private List<Track> tracks() {
    if (!isRead) {
      synchronized (this) {
        if (!isRead) {
          read = List.copyOf(reading.get());
          // It holds the whole file.
          reading = List::of;
          isRead = true;
        }
      }
    }
    return read;
  }
}
