package sheaf.desk.cli;

import java.util.Locale;

/** What {@code sheaf print} can print. */
enum Printable {
  /** Everything for one bow, with one job id. */
  PACK("pack"),
  /** A bench card, front and back. */
  BENCH_CARD("bench card"),
  /** A tear sheet. */
  TEAR("tear sheet"),
  /** A line sheet. */
  LINE("line sheet"),
  /** A pair sheet. */
  PAIR("pair sheet"),
  /** A group sheet. */
  GROUP("group sheet"),
  /** A sight-in sheet. */
  SIGHT_IN("sight-in sheet"),
  /** A bench card beside the values of an earlier job. */
  RETURN_CARD("return card"),
  /** The coloured page laid behind shot sheets. */
  BACKING("backing"),
  /** Rules to check a printer with. */
  SCALE_PAGE("scale page");

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

  /** Whether it has a front and a back, so that it comes on small paper only. */
  boolean isCard() {
    return this == BENCH_CARD || this == RETURN_CARD;
  }
}
