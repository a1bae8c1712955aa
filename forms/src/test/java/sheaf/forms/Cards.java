package sheaf.forms;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.record.BowRecord;

/** Finished cards of a few usual records, for tests. */
final class Cards {

  static final String LINK = "https://records.example/b/0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  static final Shop BENCH = Shop.named("Bow bench");

  static final BowRecord SHOWN =
      Records.of(
          Jobs.in(UnitSystem.INCHES)
              .soundBenchCard()
              .pair(Variant.SHARED_DOT, 20, 6, 2, 1, 0.3)
              .summary());
  static final BowRecord NOT_SHOWN =
      Records.of(Jobs.in(UnitSystem.INCHES).pair(Variant.TWO_DOTS, 20, 3, 31, 12, 1).summary());
  static final BowRecord ONE_ARROW =
      Records.of(Jobs.in(UnitSystem.INCHES).pair(Variant.SHARED_DOT, 20, 1, 10, 3, 1).summary());
  static final BowRecord NOT_SOUND =
      Records.of(
          Jobs.in(UnitSystem.INCHES)
              .benchCard(
                  "inspect_limbs=not sound",
                  "inspect_cams=not sound",
                  "inspect_strings=not sound",
                  "inspect_cables=not sound",
                  "inspect_riser=not sound",
                  "inspect_arrows=not sound",
                  "hand=left")
              .doubtfulPair()
              .doubtfulPair()
              .doubtfulPair()
              .doubtfulPair()
              .summary());
  static final BowRecord NOTHING = Records.of(Jobs.in(UnitSystem.INCHES).summary());

  /** What the cards carry inside. */
  private static final byte[] JSON = "{\"a\":1}".getBytes(StandardCharsets.UTF_8);

  private Cards() {}

  static byte[] json() {
    return JSON.clone();
  }

  /** A card on half a letter page. */
  static Pdf print(BowRecord record) {
    return print(record, CardForm.CARD, CardPaper.HALF_LETTER, BENCH);
  }

  static Pdf print(BowRecord record, CardForm form, CardPaper paper, Shop shop) {
    return print(record, new CardDetails(form, paper, Records.DAY, shop, Optional.empty()));
  }

  /** A card whose code opens a record. */
  static Pdf printLinked(BowRecord record, CardPaper paper, String link) {
    return print(
        record, new CardDetails(CardForm.CARD, paper, Records.DAY, BENCH, Optional.of(link)));
  }

  private static Pdf print(BowRecord record, CardDetails details) {
    return Pdf.of(out -> FinishedCard.write(record, details, JSON, out));
  }
}
