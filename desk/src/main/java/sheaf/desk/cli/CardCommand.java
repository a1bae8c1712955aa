package sheaf.desk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheaf.core.job.JobId;
import sheaf.core.page.Paper;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.json.RecordJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.forms.CardDetails;
import sheaf.forms.CardForm;
import sheaf.forms.CardPaper;
import sheaf.forms.FinishedCard;
import sheaf.forms.Shop;

/** {@code sheaf card}: the card that a customer takes home. */
@Command(
    name = "card",
    header = "Print the finished card of a job as a PDF.",
    footer = {
      "",
      "Examples:",
      "  sheaf card 7G4KQ-2M8XE-0 -o card.pdf",
      "      on half a letter page",
      "  sheaf card 7G4KQ-2M8XE-0 --paper a4 --shop \"Bow bench\" -o card.pdf",
      "      on A5, which is half of A4, with the shop's name",
      "  sheaf card 7G4KQ-2M8XE-0 --as shop-copy -o copy.pdf",
      "      on a full page, as found beside as left; wallet-tag is one to cut out",
      "",
      "The code on the card opens the customer's record when a record address is",
      "set, here or in the shop profile; otherwise it holds the",
      "job id. A second code holds the key numbers as plain text.",
      "",
      "The PDF carries the record itself: 'sheaf import card.pdf' restores it."
    })
final class CardCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "The id printed on its papers.")
  private JobId job;

  @Mixin private PdfOptions pdf;

  @Option(
      names = "--as",
      paramLabel = "card|shop-copy|wallet-tag",
      defaultValue = "card",
      converter = Choices.OfCardForm.class,
      completionCandidates = Choices.OfCardForm.class,
      description = "What it is for. Default: card, on half a page.")
  private CardForm form;

  @Option(
      names = "--shop",
      paramLabel = "NAME",
      description =
          "Who made the card, by name alone. Default: name, contact line and logo of the shop"
              + " profile.")
  private String shop;

  @Option(
      names = "--record-address",
      paramLabel = "URL",
      description = "Web address that the record's key is put behind.")
  private String recordAddress;

  CardCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    ShopProfile profile = sheaf.profile();
    Shop by = shop == null ? profile.shop() : checkedShop();
    Optional<RecordAddress> address =
        recordAddress == null ? profile.recordAddress() : Optional.of(checkedAddress());
    Paper page = pdf.paper(profile);
    StoredJob stored = StoredJob.find(job, sheaf.store(), desk.clock());
    CardDetails details =
        new CardDetails(
            form,
            cardPaper(page),
            LocalDate.now(desk.clock()),
            by,
            address.map(to -> to.link(stored.key())));
    byte[] json = RecordJson.line(stored.record()).getBytes(UTF_8);
    pdf.write(desk.console(), out -> FinishedCard.write(stored.record(), details, json, out));
    say(stored, address);
    try (Store store = Store.open(sheaf.store(), desk.clock())) {
      store.cardMade(job, Version.number());
    }
    return ExitStatus.OK.number();
  }

  private CardPaper cardPaper(Paper page) {
    if (form == CardForm.CARD) {
      return page.small() == Paper.LETTER ? CardPaper.HALF_LETTER : CardPaper.A5;
    }
    return page.small() == Paper.LETTER ? CardPaper.LETTER : CardPaper.A4;
  }

  private Shop checkedShop() {
    try {
      return Shop.named(shop);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), "--shop " + e.getMessage(), e);
    }
  }

  private RecordAddress checkedAddress() {
    try {
      return new RecordAddress(recordAddress);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), "--record-address " + e.getMessage(), e);
    }
  }

  private void say(StoredJob stored, Optional<RecordAddress> address) {
    String where = pdf.name();
    String what = form == CardForm.CARD ? "Card" : form.title();
    StringBuilder text = new StringBuilder(what + " of job " + job + " written to " + where + ".");
    stored
        .imported()
        .ifPresent(
            card ->
                text.append(stored.importCounts() ? " Made from the record of " : " Not used: ")
                    .append(card.file())
                    .append(stored.importCounts() ? "." : ", as sheets were read after it."));
    if (stored.record().last().pairAsLeft().filter(p -> p.offset().isPresent()).isEmpty()) {
      text.append(" No pair sheet with both heads has been read yet; the card says so.");
    }
    if (address.filter(RecordAddress::isOpen).isPresent()) {
      text.append(" Its link is a secret, and http sends it in the open: use https.");
    }
    Text.wrap(text.toString(), desk.console().columns()).forEach(desk.console()::say);
  }
}
