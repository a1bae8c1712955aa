package sheaf.desk.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.HasCountOptions;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import sheaf.samples.CommittedSamples;

/**
 * A day at the desk in a real browser, from printing a pack to the customer's record; then every
 * page is held against axe-core's rules for WCAG 2.2 AA and its picture is taken.
 */
@Tag("slow")
@TestInstance(Lifecycle.PER_CLASS)
@TestMethodOrder(OrderAnnotation.class)
class BrowserDayTest {

  private static final String JOB = "J452V-V4909-H";
  private static final Path PICTURES = Path.of("target", "screenshots");

  /** Reading takes seconds where others work on the machine too. */
  private static final double PATIENCE_MS = 120_000;

  private Path home;
  private Chromium chromium;
  private DeskUnderTest desk;
  private BrowserContext context;
  private Page page;
  private String record;

  @BeforeAll
  void open(@TempDir Path folder) {
    home = folder;
    chromium = Chromium.start();
    desk = DeskUnderTest.reading(home);
    context = chromium.browser().newContext(options(1366, ColorScheme.LIGHT));
    context.setDefaultTimeout(PATIENCE_MS);
    page = context.newPage();
  }

  private Browser.NewContextOptions options(int width, ColorScheme scheme) {
    return new Browser.NewContextOptions()
        .setBaseURL("http://localhost:" + desk.port())
        .setViewportSize(width, width < 500 ? 844 : 768)
        .setHasTouch(width < 500)
        .setColorScheme(scheme);
  }

  @AfterAll
  void close() {
    if (chromium != null) {
      chromium.close();
    }
    if (desk != null) {
      desk.close();
    }
  }

  private byte[] pdf(String path, FormData form) {
    page.navigate(path.equals("/print") ? path : "/job/" + JOB);
    form.set("token", page.locator("input[name=token]").first().inputValue());
    return context.request().post(path, RequestOptions.create().setForm(form)).body();
  }

  @Test
  @Order(1)
  void packIsPrinted() throws Exception {
    FormData form =
        FormData.create()
            .set("what", "pack")
            .set("copies", "2")
            .set("bow", "compound")
            .set("paper", "letter")
            .set("units", "in")
            .set("job", "");

    try (PDDocument pack = Loader.loadPDF(pdf("/print", form))) {
      // A card of two sides, then five targets with empty backs, twice.
      assertThat(pack.getNumberOfPages()).isBetween(22, 24);
    }
  }

  @Test
  @Order(2)
  void droppedScansAreAnsweredOneByOne() {
    page.navigate("/");
    page.locator("#files").setInputFiles(samples("job-", "check-head-mixed-up"));
    Locator results = page.locator("#results li.drop-result:not(.waiting)");

    assertThat(results).hasCount(7, count());
    assertThat(page.locator("#results")).containsText("Broadheads hit");
    assertThat(page.locator("#results")).containsText("Next:");
    assertThat(page.locator("#progress")).hasText("7 read");
  }

  private static HasCountOptions count() {
    return new HasCountOptions().setTimeout(PATIENCE_MS);
  }

  private static FilePayload[] samples(String... beginnings) {
    return CommittedSamples.all().stream()
        .filter(sample -> Stream.of(beginnings).anyMatch(sample.name()::startsWith))
        .map(sample -> new FilePayload(sample.name(), "image/jpeg", sample.file()))
        .toArray(FilePayload[]::new);
  }

  @Test
  @Order(3)
  void doubtIsSettledWithOneTouch() {
    page.navigate("/doubts");
    String asked = page.locator(".doubt .big").textContent();
    assertThat(page.locator("svg.look image")).isVisible();

    page.locator("#accept").click();

    page.waitForLoadState();
    List<String> now = page.locator(".doubt .big").allTextContents();
    assertThat(now).doesNotContain(asked);
  }

  @Test
  @Order(4)
  void holeIsDraggedAndTheOffsetFollows() {
    page.navigate("/job/" + JOB + "/sheet/2");
    Locator answer = page.locator("#answer > p").first();
    String before = answer.textContent();
    drag(page.locator("#holes .handle").last(), 40, -25);

    assertThat(page.locator("#said")).hasText("Not kept yet.");
    assertThat(answer).not().hasText(before);
    String moved = answer.textContent();

    page.locator("#undo").click();
    assertThat(answer).hasText(before);

    drag(page.locator("#holes .handle").last(), 40, -25);
    assertThat(answer).not().hasText(before);
    page.locator("#keep").click();
    // The page opens anew, and there is nothing to undo.
    assertThat(page.locator("#undo")).isDisabled();
    page.waitForLoadState();
    assertThat(page.locator("#answer > p").first()).not().hasText(before);
    assertThat(moved).startsWith("Broadheads hit");
    assertThat(page.locator("#machine circle")).hasCount(6);
  }

  private void drag(Locator hole, int right, int down) {
    hole.scrollIntoViewIfNeeded();
    BoundingBox box = hole.boundingBox();
    double x = box.x + box.width / 2;
    double y = box.y + box.height / 2;
    page.mouse().move(x, y);
    page.mouse().down();
    page.mouse().move(x + right / 2.0, y + down / 2.0);
    page.mouse().move(x + right, y + down);
    page.mouse().up();
  }

  @Test
  @Order(5)
  void codeOnTheFinishedCardOpensTheCustomersRecord() throws Exception {
    byte[] card = pdf("/job/" + JOB + "/card", FormData.create().set("form", "card"));
    String address = address(card);

    assertThat(address).startsWith("https://records.example/r/");
    record = address.substring("https://records.example".length()) + "/";
    page.navigate(record);
    assertThat(page.locator("main")).containsText(JOB);
    assertThat(page.locator("svg.shots").first()).isVisible();
    assertThat(context.request().get(record + "card.pdf").body()).startsWith('%', 'P', 'D', 'F');
  }

  /** The web address in one of the codes on a card, looked for in windows of the page. */
  private static String address(byte[] card) throws Exception {
    try (PDDocument document = Loader.loadPDF(card)) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 300);
      for (int parts = 3; parts <= 6; parts++) {
        int side = image.getWidth() / parts;
        for (int y = 0; y + side <= image.getHeight() / 2; y += side / 8) {
          for (int x = 0; x + side <= image.getWidth(); x += side / 8) {
            Optional<String> text = code(image.getSubimage(x, y, side, side));
            if (text.filter(one -> one.startsWith("https:")).isPresent()) {
              return text.get();
            }
          }
        }
      }
    }
    throw new AssertionError("no code on the card holds a web address");
  }

  private static Optional<String> code(BufferedImage window) {
    int side = window.getWidth();
    int[] pixels = window.getRGB(0, 0, side, side, null, 0, side);
    try {
      return Optional.of(
          new QRCodeReader()
              .decode(
                  new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))))
              .getText());
    } catch (ReaderException e) {
      return Optional.empty();
    }
  }

  @Test
  @Order(6)
  void everyPageIsForEverybody() {
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      for (int width : new int[] {320, 390, 1366, 1920}) {
        try (BrowserContext fresh = chromium.browser().newContext(options(width, scheme))) {
          fresh.setDefaultTimeout(PATIENCE_MS);
          look(fresh.newPage(), width, scheme);
        }
      }
    }
  }

  private void look(Page one, int width, ColorScheme scheme) {
    String job = "/job/" + JOB;
    List<String> paths =
        List.of(
            "/",
            job,
            job + "/sheet/2",
            job + "/sheet/1",
            "/doubts",
            "/bow/" + JOB,
            "/print",
            "/find",
            "/none",
            record);
    for (String path : paths) {
      one.navigate(path);
      String name = name(path);
      if (scheme == ColorScheme.LIGHT || width == 390) {
        one.screenshot(
            new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(
                    PICTURES.resolve(
                        "%s-%d-%s.png"
                            .formatted(name, width, scheme.name().toLowerCase(Locale.ROOT)))));
      }
      assertThat(one.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
          .as(path + " at " + width + " px is no wider than the window")
          .isEqualTo(true);
      if (width == 390 || width == 1366) {
        assertThat(new AxeBuilder(one).withTags(rules()).analyze().getViolations())
            .as(path + " at " + width + " px, " + scheme)
            .isEmpty();
      }
    }
  }

  private String name(String path) {
    if (path.equals(record)) {
      return "record";
    }
    String words = path.replace(JOB, "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return words.isEmpty() ? "drop" : words;
  }

  private static List<String> rules() {
    return List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
  }
}
