package sheaf.desk.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/** The browser of this computer, without a window. */
final class Chromium implements AutoCloseable {

  private static final List<String> PLACES =
      List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");

  private final Playwright playwright;
  private final Browser browser;

  private Chromium(Playwright playwright, Browser browser) {
    this.playwright = playwright;
    this.browser = browser;
  }

  /** Starts it; the test is skipped, and says so, where there is none. */
  static Chromium start() {
    Optional<Path> found = PLACES.stream().map(Path::of).filter(Files::isExecutable).findFirst();
    Assumptions.assumeTrue(
        found.isPresent(), "no Chromium here: install it, as with 'apt-get install chromium'");
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    Browser browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(found.get())
                    .setArgs(List.of("--no-sandbox", "--disable-background-networking")));
    return new Chromium(playwright, browser);
  }

  Browser browser() {
    return browser;
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
