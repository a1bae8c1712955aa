package sheaf.forms.draw;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Calendar;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * A file carried inside a PDF as an associated file (ISO 19005-3, 6.8).
 *
 * @param name with its ending
 * @param type its media type, such as {@code application/json}
 * @param description for people who look at the list of attachments
 * @param content byte for byte
 */
public record EmbeddedFile(String name, String type, String description, byte[] content) {

  /** A record of many visits has some 100 kB; a small file may unpack to far more. */
  private static final int MOST_BYTES = 20_000_000;

  private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");
  private static final COSName ASSOCIATED = COSName.getPDFName("AF");

  /** Copies the content. */
  public EmbeddedFile {
    content = content.clone();
  }

  @Override
  public byte[] content() {
    return content.clone();
  }

  /** The SHA-256 digest of the content, in hexadecimal. */
  public String sha256() {
    return sha256(content);
  }

  /** The SHA-256 digest of some content (FIPS 180-4), in hexadecimal. */
  public static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Puts the file into a document: the document was made from it, so it is its source. */
  void attach(PDDocument document, Calendar modified) throws IOException {
    PDEmbeddedFile file =
        new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
    file.setSubtype(type);
    file.setSize(content.length);
    file.setModDate(modified);
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(name);
    specification.setFileUnicode(name);
    specification.setFileDescription(description);
    specification.setEmbeddedFile(file);
    specification.setEmbeddedFileUnicode(file);
    specification.getCOSObject().setName(RELATIONSHIP, "Source");
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(Map.of(name, specification));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(tree);
    document.getDocumentCatalog().setNames(names);
    COSArray associated = new COSArray();
    associated.add(specification);
    document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED, associated);
  }

  /** The digest that a document's metadata announces for the file inside; empty without one. */
  public static Optional<String> announcedDigest(PDDocument document) throws IOException {
    PDMetadata metadata = document.getDocumentCatalog().getMetadata();
    return metadata == null ? Optional.empty() : Xmp.digest(limited(metadata));
  }

  /** The content of an attached file of a name; empty when there is none. */
  public static Optional<byte[]> content(PDDocument document, String name) throws IOException {
    PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
    PDEmbeddedFilesNameTreeNode tree = names == null ? null : names.getEmbeddedFiles();
    PDComplexFileSpecification file = tree == null ? null : tree.getValue(name);
    return file == null || file.getEmbeddedFile() == null
        ? Optional.empty()
        : Optional.of(limited(file.getEmbeddedFile()));
  }

  private static byte[] limited(PDStream stream) throws IOException {
    try (InputStream in = stream.createInputStream()) {
      byte[] content = in.readNBytes(MOST_BYTES + 1);
      if (content.length > MOST_BYTES) {
        throw new IOException("a file inside has more than " + MOST_BYTES + " bytes");
      }
      return content;
    }
  }
}
