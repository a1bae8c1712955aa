package sheaf.desk.web.http;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongSupplier;

/**
 * A body that comes in; one that comes too slowly is refused, since each takes a thread. One that
 * stands still altogether is ended by the server's own limit.
 */
final class PatientStream extends FilterInputStream {

  /** Nobody is hurried before so many nanoseconds: a phone may wake its radio first. */
  private static final long PATIENCE = 10_000_000_000L;

  /** Bytes a second that any wireless network carries; a photo then takes some minutes. */
  private static final double SLOWEST = 8_000;

  private final LongSupplier time;
  private final long begun;
  private long count;

  PatientStream(InputStream in) {
    this(in, System::nanoTime);
  }

  /** The same by another clock, which counts nanoseconds. */
  PatientStream(InputStream in, LongSupplier time) {
    super(in);
    this.time = time;
    this.begun = time.getAsLong();
  }

  @Override
  public int read() throws IOException {
    int one = super.read();
    counted(one < 0 ? 0 : 1);
    return one;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    int some = super.read(into, offset, length);
    counted(Math.max(0, some));
    return some;
  }

  private void counted(int more) {
    count += more;
    long since = time.getAsLong() - begun;
    if (more > 0 && since > PATIENCE && count < since / 1e9 * SLOWEST) {
      throw new Refusal(408, "The network is too slow for this picture: move nearer to it.");
    }
  }
}
