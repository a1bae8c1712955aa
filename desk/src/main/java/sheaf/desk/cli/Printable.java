package sheaf.desk.cli;

import java.util.Locale;

/** What {@code sheaf print} can print. */
enum Printable {
  /** A pair sheet. */
  PAIR("pair sheet"),
  /** A bench card. */
  BENCH_CARD("bench card"),
  /** A bench card and pair sheets with one job id. */
  PACK("pack"),
  /** The coloured page laid behind shot sheets. */
  BACKING("backing");

  private final String noun;

  Printable(String noun) {
    this.noun = noun;
  }

  /** In sentences. */
  String noun() {
    return noun;
  }

  /** The name in commands. */
  String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
