package sheaf.desk.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.http.Words;
import sheaf.desk.work.LastValues;
import sheaf.desk.work.Printable;
import sheaf.forms.Backing;
import sheaf.forms.BlankSheets;
import sheaf.forms.Pack;
import sheaf.forms.SheetValues;
import sheaf.forms.Sides;

/** Prints blank papers. */
final class PrintPage {

  /** More at once are printed by command; this many come within seconds. */
  private static final int MOST_COPIES = 50;

  private final Works works;
  private final Look look;
  private final Stores stores;

  PrintPage(Works works, Look look, Stores stores) {
    this.works = works;
    this.look = look;
    this.stores = stores;
  }

  Reply show(Request request) {
    ShopProfile profile = works.profile().get();
    return look.page(
        request,
        "print",
        "Print",
        "/print",
        Map.of(
            "paper", profile.paper().label(),
            "units", profile.units().label(),
            "job", request.query().find("job").orElse("")));
  }

  /** What somebody wants printed. */
  private record Wish(
      Printable what,
      Paper paper,
      UnitSystem units,
      BowType bow,
      int copies,
      Optional<JobId> from) {}

  private static Wish wish(Words form) {
    Printable what = one(Printable.values(), Printable::label, form.get("what"));
    Paper paper = one(Paper.values(), Paper::label, form.get("paper"));
    String copies = form.find("copies").orElse("1");
    if (!copies.matches("\\d{1,2}") || copies.matches("0+") || number(copies) > MOST_COPIES) {
      throw new Refusal(
          400,
          "1 to %d copies are printed here at a time; 'sheaf print' on the command line prints more."
              .formatted(MOST_COPIES));
    }
    Optional<JobId> from =
        what == Printable.RETURN_CARD ? form.find("job").map(Jobs::id) : Optional.empty();
    return new Wish(
        what,
        what.isCard() ? paper.small() : paper,
        one(UnitSystem.values(), UnitSystem::label, form.get("units")),
        one(BowType.values(), BowType::label, form.find("bow").orElse("compound")),
        number(copies),
        from);
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  private static <T> T one(T[] all, Function<T, String> label, String typed) {
    return Arrays.stream(all)
        .filter(value -> label.apply(value).equals(typed))
        .findFirst()
        .orElseThrow(() -> new Refusal(400, "That cannot be printed: go back and choose again."));
  }

  /** The papers as a PDF; which sheets they are is noted, so that missing ones are known. */
  Reply print(Request request) {
    Wish wish = wish(request.form());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (wish.what() == Printable.BACKING) {
        Backing.write(wish.paper(), wish.copies(), out);
      } else {
        sheets(wish, out);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Reply.file("application/pdf", out.toByteArray(), wish.what().label() + ".pdf");
  }

  private void sheets(Wish wish, ByteArrayOutputStream out) throws IOException {
    boolean pack = wish.what() == Printable.PACK;
    List<Variant> variants = pack ? Pack.usual(wish.bow()) : wish.what().variants(wish.bow());
    List<SheetCode> codes = new ArrayList<>();
    for (int i = 0; i < wish.copies(); i++) {
      codes.addAll(Pack.sheets(JobId.random(works.random()), variants, wish.paper(), wish.units()));
    }
    Sides sides = pack || wish.what().isCard() ? Sides.BOTH : Sides.ONE;
    BlankSheets.write(codes, sides, values(wish), out);
    stores.with(
        store -> {
          store.printed(codes, wish.from(), works.program());
          return true;
        });
  }

  private SheetValues values(Wish wish) {
    ShopProfile profile = works.profile().get();
    SheetValues last =
        wish.from()
            .map(
                job ->
                    stores.with(
                        store -> SheetValues.last(LastValues.of(Jobs.known(job, store).summary()))))
            .orElse(SheetValues.NONE);
    return last.withDistances(profile.ownDistances(wish.units()).orElse(List.of()));
  }
}
