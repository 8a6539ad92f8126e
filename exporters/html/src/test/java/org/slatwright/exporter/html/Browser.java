package org.slatwright.exporter.html;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.WheelInput;
import org.openqa.selenium.json.Json;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LoggingPreferences;
import org.slatwright.testkit.OutsideTool;

/** A real browser without a network, in which a page is looked at as a maker would. */
final class Browser implements AutoCloseable {

  /** Where Debian's package chromium-driver has it. */
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  /** It says that it lacks what is not used here: commands of one version of the browser. */
  private static final Logger VERSIONS =
      Logger.getLogger("org.openqa.selenium.devtools.CdpVersionFinder");

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /**
   * Starts one, or skips the test where it is missing.
   *
   * @param profile an empty folder
   */
  static Browser start(Path profile) {
    VERSIONS.setLevel(Level.SEVERE);
    OutsideTool.thatRuns("chromium", "--version");
    OutsideTool.thatRuns(DRIVER.toString(), "--version");
    ChromeOptions options = new ChromeOptions();
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--user-data-dir=" + profile);
    options.setBinary("/usr/bin/chromium");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable("performance", Level.ALL);
    logs.enable("browser", Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    // The driver is named, so that nothing is looked up or fetched.
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(DRIVER.toString()))
            .usingAnyFreePort()
            .build();
    Browser browser = new Browser(new ChromeDriver(service, options));
    browser.cut();
    browser.forget();
    return browser;
  }

  /** No network from here on. */
  private void cut() {
    cdp("Network.enable", Map.of());
    cdp(
        "Network.emulateNetworkConditions",
        Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
  }

  /** Shows a file. */
  void open(Path page) {
    driver.get(page.toUri().toString());
  }

  void reload() {
    driver.navigate().refresh();
  }

  /** The size of the window, in CSS pixels; a phone has a finger for a pointer. */
  void size(int width, int height, boolean phone) {
    cdp(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
    cdp("Emulation.setTouchEmulationEnabled", Map.of("enabled", phone));
  }

  /** What the device wishes: {@code light} or {@code dark}. */
  void wish(String scheme) {
    cdp(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            "",
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** What a script says. */
  Object script(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** What a script hands to its last argument, a function, sooner or later. */
  Object scriptWithCallback(String script, Object... arguments) {
    return driver.executeAsyncScript(script, arguments);
  }

  String text(String script, Object... arguments) {
    return String.valueOf(script(script, arguments));
  }

  long number(String script, Object... arguments) {
    return ((Number) script(script, arguments)).longValue();
  }

  WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** Touches the middle of an element, once it is clear of the bar at the top. */
  void touch(String selector) {
    WebElement element = one(selector);
    script("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  /** Presses a key, whatever has the focus. */
  void press(CharSequence key) {
    new Actions(driver).sendKeys(key).perform();
  }

  /** Presses a key while another is held. */
  void chord(CharSequence held, CharSequence key) {
    new Actions(driver).keyDown(held).sendKeys(key).keyUp(held).perform();
  }

  /** Turns the wheel over the middle of an element; negative is away from the hand. */
  void wheel(String selector, int amount) {
    new Actions(driver)
        .scrollFromOrigin(WheelInput.ScrollOrigin.fromElement(one(selector)), 0, amount)
        .perform();
  }

  Map<String, Object> cdp(String command, Map<String, Object> parameters) {
    return driver.executeCdpCommand(command, parameters);
  }

  /** As paper would have it. */
  byte[] printed() {
    Map<String, Object> printed =
        cdp("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", false));
    return Base64.getDecoder().decode(String.valueOf(printed.get("data")));
  }

  void photograph(Path png) throws IOException {
    Files.write(png, driver.getScreenshotAs(OutputType.BYTES));
  }

  /**
   * Every address asked for since this was last called, the file itself and data within it aside.
   */
  List<String> requests() {
    return driver.manage().logs().get("performance").getAll().stream()
        .map(Browser::address)
        .filter(address -> !address.isEmpty())
        .filter(address -> !address.startsWith("file:") && !address.startsWith("data:"))
        .toList();
  }

  /** Has the next list of requests or complaints begin here. */
  void forget() {
    requests();
    complaints();
  }

  /** What the browser complained of since this was last called. */
  List<String> complaints() {
    return driver.manage().logs().get("browser").getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  @SuppressWarnings("unchecked")
  private static String address(LogEntry entry) {
    Map<String, Object> outer = new Json().toType(entry.getMessage(), Json.MAP_TYPE);
    Map<String, Object> message = (Map<String, Object>) outer.get("message");
    if (!"Network.requestWillBeSent".equals(message.get("method"))) {
      return "";
    }
    Map<String, Object> sent = (Map<String, Object>) message.get("params");
    return String.valueOf(((Map<String, Object>) sent.get("request")).get("url"));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
