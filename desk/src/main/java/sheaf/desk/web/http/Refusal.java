package sheaf.desk.web.http;

/** Ends a request with a status and a sentence for the person who made it. */
public final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int status;

  /**
   * A refusal.
   *
   * @param status of HTTP, 400 to 599
   * @param sentence what is wrong and what to do
   */
  public Refusal(int status, String sentence) {
    super(sentence);
    this.status = status;
  }

  /** Nothing is there. */
  public static Refusal notFound(String sentence) {
    return new Refusal(404, sentence);
  }

  /** The status of HTTP. */
  public int status() {
    return status;
  }
}
