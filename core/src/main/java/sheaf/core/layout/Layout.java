package sheaf.core.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * Where everything is on a sheet, in millimetres from the page's top-left corner: the one contract
 * between what is printed and what is read.
 *
 * @param id its name
 * @param title what the sheet is called in print
 * @param marks the eight register marks, clockwise from the top left
 * @param codes where the two QR codes stand, quiet zone included
 * @param dots the aim dots; none on a bench card
 * @param target where arrows are meant to land; empty on a bench card
 * @param zones numbered parts of the target; none when it is one
 * @param notes where people write freely, kept as a picture; empty when there is no such place
 * @param fields what people fill in, in reading order
 * @param ink all else that is printed
 */
public record Layout(
    LayoutId id,
    String title,
    List<RegisterMark> marks,
    List<MmRect> codes,
    List<AimDot> dots,
    Optional<MmRect> target,
    List<Zone> zones,
    Optional<MmRect> notes,
    List<Field> fields,
    List<Ink> ink) {

  /** Copies the lists. */
  public Layout {
    marks = List.copyOf(marks);
    codes = List.copyOf(codes);
    dots = List.copyOf(dots);
    zones = List.copyOf(zones);
    fields = List.copyOf(fields);
    ink = List.copyOf(ink);
  }

  /** The whole page. */
  public MmRect page() {
    return new MmRect(0, 0, id.paper().width(), id.paper().height());
  }

  /** The zone that a place lies in or, outside all of them, is nearest to; empty without zones. */
  public Optional<Zone> zoneAt(MmPoint place) {
    return zones.stream().min(Comparator.comparingDouble(zone -> zone.rect().distanceTo(place)));
  }

  /** All boxes that are ticked or written in, in reading order. */
  public List<MmRect> boxes() {
    return fields.stream().flatMap(field -> field.boxes().stream()).toList();
  }

  /** A field by its key; throws when the sheet has none of that name. */
  public Field field(String key) {
    return fields.stream()
        .filter(field -> field.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no field " + key + " on " + id.code()));
  }
}
