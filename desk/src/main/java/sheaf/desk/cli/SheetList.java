package sheaf.desk.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheaf.core.layout.BowType;
import sheaf.core.layout.Variant;
import sheaf.desk.work.PackSheet;

/**
 * The sheets of a pack as a person lists them: {@code tear*2,line,pair*2}.
 *
 * @param sheets in the order of the list, one or more
 */
record SheetList(List<PackSheet> sheets) {

  /** More of one job cannot be meant, and a sheet's number has three digits. */
  private static final int MOST = 99;

  /** Copies the list. */
  SheetList {
    sheets = List.copyOf(sheets);
  }

  /** The pages of a pack: the bow's bench card first, unless the list names a card itself. */
  List<Variant> variants(BowType bow) {
    List<PackSheet> all = new ArrayList<>();
    if (sheets.stream().noneMatch(PackSheet::isCard)) {
      all.add(PackSheet.BENCH_CARD);
    }
    all.addAll(sheets);
    return all.stream().flatMap(sheet -> sheet.variants(bow).stream()).toList();
  }

  /** Whether a return card is among them. */
  boolean hasReturnCard() {
    return sheets.contains(PackSheet.RETURN_CARD);
  }

  /** Reads a list. */
  static final class Reader implements ITypeConverter<SheetList> {

    @Override
    public SheetList convert(String typed) {
      List<PackSheet> sheets = new ArrayList<>();
      for (String part : typed.split(",", -1)) {
        sheets.addAll(part(part.strip().toLowerCase(Locale.ROOT), typed));
        if (sheets.size() > MOST) {
          throw new TypeConversionException("more than " + MOST + " sheets in one pack");
        }
      }
      return new SheetList(sheets);
    }

    private static List<PackSheet> part(String part, String typed) {
      if (part.isEmpty()) {
        throw new TypeConversionException(
            "a sheet is missing in '%s': write them as in tear*2,line,pair".formatted(typed));
      }
      int star = part.indexOf('*');
      String word = star < 0 ? part : part.substring(0, star).strip();
      int times = star < 0 ? 1 : times(part.substring(star + 1).strip(), part);
      return Collections.nCopies(times, sheet(word));
    }

    private static int times(String number, String part) {
      if (!number.matches("[1-9][0-9]?")) {
        throw new TypeConversionException(
            "'%s' must say how often with a number from 1 to %d, as in tear*2"
                .formatted(part, MOST));
      }
      return Integer.parseInt(number);
    }

    private static PackSheet sheet(String word) {
      return Arrays.stream(PackSheet.values())
          .filter(sheet -> sheet.label().equals(word))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("'" + word + "' is none of " + words()));
    }

    private static String words() {
      return Arrays.stream(PackSheet.values())
          .map(PackSheet::label)
          .collect(Collectors.joining(", "));
    }
  }
}
