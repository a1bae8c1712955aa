package sheaf.forms.draw;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/**
 * A PDF to be kept for years and read by everyone: PDF/A-3b (ISO 19005-3) and PDF/UA-1 (ISO
 * 14289-1), with a file inside. Two documents made from the same input are the same, byte for byte.
 */
public final class ArchivalDocument implements AutoCloseable {

  /** PDF 1.7, which both standards build on. */
  private static final float VERSION = 1.7f;

  private static final byte[] SRGB = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

  private final PDDocument document = new PDDocument();
  private final PDStructureTreeRoot tree = new PDStructureTreeRoot();
  private final Map<PDPage, COSArray> owners = new HashMap<>();
  private final List<PDPage> pages = new ArrayList<>();
  private final Typeface typeface;
  private final Part root;

  /**
   * Begins a document.
   *
   * @param title shown by readers in place of the file's name
   * @param made the day it is made on
   * @param inside the file that it carries
   */
  public ArchivalDocument(String title, LocalDate made, EmbeddedFile inside) throws IOException {
    typeface = new Typeface(document);
    document.setVersion(VERSION);
    document.setDocumentId((long) (title + made + inside.sha256()).hashCode());
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage("en");
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    catalog.setMarkInfo(marked);
    catalog.setStructureTreeRoot(tree);
    root = Part.root(tree);
    describe(title, made, inside);
    outputIntent(catalog);
    inside.attach(document, midnight(made));
  }

  /** The whole document, to add parts to. */
  public Part root() {
    return root;
  }

  /** For measuring texts before there is a page. */
  public Typeface typeface() {
    return typeface;
  }

  /** Adds a page of a size in millimetres. */
  public PDPage page(double width, double height) {
    PDPage page = new PDPage(new PDRectangle(Mm.points(width), Mm.points(height)));
    page.setStructParents(pages.size());
    page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
    pages.add(page);
    owners.put(page, new COSArray());
    document.addPage(page);
    return page;
  }

  /** Something drawn with a tagged pen. */
  @FunctionalInterface
  public interface Drawing {
    /** Draws. */
    void draw(TaggedPen pen) throws IOException;
  }

  /** Draws on a page, after anything drawn before. */
  public void draw(PDPage page, Drawing drawing) throws IOException {
    try (PDPageContentStream out =
        new PDPageContentStream(
            document, page, PDPageContentStream.AppendMode.APPEND, true, false)) {
      drawing.draw(new TaggedPen(document, out, page, typeface, owners.get(page)));
    }
  }

  /** Writes the finished document; the stream is left open. */
  public void write(OutputStream out) throws IOException {
    Map<Integer, PDParentTreeValue> parents = new HashMap<>();
    for (int i = 0; i < pages.size(); i++) {
      parents.put(i, new PDParentTreeValue(owners.get(pages.get(i))));
    }
    PDNumberTreeNode numbers = new PDNumberTreeNode(PDParentTreeValue.class);
    numbers.setNumbers(parents);
    tree.setParentTree(numbers);
    tree.setParentTreeNextKey(pages.size());
    document.save(out);
  }

  private void describe(String title, LocalDate made, EmbeddedFile inside) throws IOException {
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setCreator(Xmp.CREATOR);
    document.getDocumentInformation().setCreationDate(midnight(made));
    PDMetadata metadata = new PDMetadata(document);
    String packet = Xmp.packet(title, made, inside.sha256());
    metadata.importXMPMetadata(packet.getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
  }

  private void outputIntent(PDDocumentCatalog catalog) throws IOException {
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(SRGB));
    intent.setInfo("sRGB IEC61966-2.1");
    intent.setOutputCondition("sRGB IEC61966-2.1");
    intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
    intent.setRegistryName("http://www.color.org");
    catalog.addOutputIntent(intent);
  }

  private static Calendar midnight(LocalDate day) {
    return GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
