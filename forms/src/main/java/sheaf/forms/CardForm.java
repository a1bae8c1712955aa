package sheaf.forms;

import java.util.Locale;

/** The forms that a finished card is printed in. */
public enum CardForm {
  /** For the customer, on half a page: what restores the bow, and the proof of its tune. */
  CARD("Finished card"),
  /** For the shop's folder, on a full page: as found beside as left. */
  SHOP_COPY("Shop copy"),
  /** To cut out, fold and carry: the key numbers. */
  WALLET_TAG("Wallet tag");

  private final String title;

  CardForm(String title) {
    this.title = title;
  }

  /** What stands at its head. */
  public String title() {
    return title;
  }

  /** The name in commands: {@code shop-copy}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
