// Time from a slider's move to the painted pictures in Chromium, and the long tasks of the page meanwhile.
import { openPage, settled, startBrowser } from "./browser.mjs";

const BUDGET = 16.7;
const MOVES = 120;

const browser = await startBrowser();
try {
  const { page } = await openPage(browser);
  await settled(page);
  const slider = page.locator("#swings input[type=range]").first();
  await slider.scrollIntoViewIfNeeded();
  await page.evaluate(() => {
    window.slid = { painted: [], long: [] };
    new PerformanceObserver((list) => window.slid.long.push(...list.getEntries().map((entry) => entry.duration))).observe({ type: "longtask" });
    // After the page's own listener, so after its frame's work.
    window.addEventListener("input", (event) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => window.slid.painted.push(performance.now() - event.timeStamp);
        port2.postMessage(null);
      });
    });
  });
  const box = await slider.boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  for (let move = 0; move < MOVES; move += 1) {
    await page.mouse.move(box.x + box.width * (0.5 + 0.4 * Math.sin(move / 9)), box.y + box.height / 2);
    await new Promise((next) => setTimeout(next, 20));
  }
  await page.mouse.up();
  const { painted, long } = await page.evaluate(() => window.slid);
  painted.sort((a, b) => a - b);
  const at = (share) => painted[Math.min(painted.length - 1, Math.floor(painted.length * share))].toFixed(1);
  console.log(`slider to painted pictures ${at(0.5)} ms, 95 of 100 within ${at(0.95)} ms of ${BUDGET} (${painted.length} moves, frame wait included)`);
  console.log(`long tasks meanwhile: ${long.length}${long.length > 0 ? `, the longest ${Math.max(...long).toFixed(0)} ms` : ""} of 50`);
} finally {
  await browser.close();
}
