package sheaf.forms.draw;

import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/**
 * A part of a tagged document: what a screen reader calls a heading, a paragraph, a table.
 *
 * <p>Parts are read in the order in which they were added, wherever they stand on the pages.
 */
public final class Part {

  private final PDStructureElement element;

  private Part(String type, PDStructureNode parent) {
    element = new PDStructureElement(type, parent);
    parent.appendKid(element);
  }

  static Part root(PDStructureNode tree) {
    return new Part("Document", tree);
  }

  /**
   * A new last part of this one.
   *
   * @param type a standard structure type (ISO 32000-1, 14.8.4): {@code P}, {@code H1}, {@code TR}
   */
  public Part add(String type) {
    return new Part(type, element);
  }

  /** A cell that names its row. */
  public Part addRowHeading() {
    Part heading = add("TH");
    PDTableAttributeObject scope = new PDTableAttributeObject();
    scope.setScope(PDTableAttributeObject.SCOPE_ROW);
    heading.element.addAttribute(scope);
    return heading;
  }

  /** A cell that names its column. */
  public Part addColumnHeading() {
    Part heading = add("TH");
    PDTableAttributeObject scope = new PDTableAttributeObject();
    scope.setScope(PDTableAttributeObject.SCOPE_COLUMN);
    heading.element.addAttribute(scope);
    return heading;
  }

  /** A picture, told in words to those who do not see it. */
  Part addFigure(String alternative, PDRectangle place) {
    Part figure = add("Figure");
    figure.element.setAlternateDescription(alternative);
    PDLayoutAttributeObject layout = new PDLayoutAttributeObject();
    layout.setBBox(place);
    layout.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
    figure.element.addAttribute(layout);
    return figure;
  }

  /** What its letters stand for, where the typeface lacks some of them. */
  void actualText(String text) {
    element.setActualText(text);
  }

  PDStructureElement element() {
    return element;
  }
}
