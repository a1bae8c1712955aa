package sheaf.forms.draw;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The metadata of an archival document as an XMP packet (ISO 16684-1), with the parts that PDF/A
 * and PDF/UA ask for and the digest of the file inside.
 */
final class Xmp {

  /** What makes the documents. */
  static final String CREATOR = "Sheaf";

  /** The namespace of our own property. A name only; nothing is ever fetched from it. */
  static final String NAMESPACE = "urn:sheaf:card:1:";

  /** The property that holds the SHA-256 digest of the file inside, in hexadecimal. */
  static final String DIGEST = "recordSha256";

  private static final String TEMPLATE =
      """
      <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
       <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/"
          xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" xmlns:sheaf="%1$s">
         <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%2$s</rdf:li></rdf:Alt></dc:title>
         <dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>
         <xmp:CreatorTool>%3$s</xmp:CreatorTool>
         <xmp:CreateDate>%4$sT00:00:00Z</xmp:CreateDate>
         <pdfaid:part>3</pdfaid:part>
         <pdfaid:conformance>B</pdfaid:conformance>
         <pdfuaid:part>1</pdfuaid:part>
         <sheaf:%5$s>%6$s</sheaf:%5$s>
        </rdf:Description>
        <rdf:Description rdf:about=""
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
         <pdfaExtension:schemas><rdf:Bag>
      %7$s%8$s   </rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
       </rdf:RDF>
      </x:xmpmeta>
      <?xpacket end="r"?>""";

  private static final String SCHEMA =
      """
          <rdf:li rdf:parseType="Resource">
           <pdfaSchema:schema>%s</pdfaSchema:schema>
           <pdfaSchema:namespaceURI>%s</pdfaSchema:namespaceURI>
           <pdfaSchema:prefix>%s</pdfaSchema:prefix>
           <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>%s</pdfaProperty:name>
            <pdfaProperty:valueType>%s</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>%s</pdfaProperty:description>
           </rdf:li></rdf:Seq></pdfaSchema:property>
          </rdf:li>
      """;

  private static final Pattern DIGEST_ELEMENT =
      Pattern.compile("<sheaf:" + DIGEST + ">\\s*([0-9a-f]{64})\\s*</sheaf:" + DIGEST + ">");

  private Xmp() {}

  static String packet(String title, LocalDate made, String digest) {
    String accessible =
        SCHEMA.formatted(
            "PDF/UA identification",
            "http://www.aiim.org/pdfua/ns/id/",
            "pdfuaid",
            "part",
            "Integer",
            "Part of ISO 14289 that the document conforms to");
    String own =
        SCHEMA.formatted(
            "Sheaf card", NAMESPACE, "sheaf", DIGEST, "Text", "SHA-256 of the attached record");
    return TEMPLATE.formatted(
        NAMESPACE, escaped(title), CREATOR, made, DIGEST, digest, accessible, own);
  }

  /** The digest in a packet; empty when it has none, so that it is no packet of ours. */
  static Optional<String> digest(byte[] packet) {
    Matcher found = DIGEST_ELEMENT.matcher(new String(packet, StandardCharsets.UTF_8));
    return found.find() ? Optional.of(found.group(1)) : Optional.empty();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
