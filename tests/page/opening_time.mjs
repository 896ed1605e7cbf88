// Time from opening the page to the painted answer in Chromium: fresh browsers, the median; once as the machine is and once
// with a processor slowed four times.
import { startBrowser } from "./browser.mjs";
import { pageAddress } from "./place.mjs";

/** How often, and the budget in milliseconds, by how many times the processor is slowed. */
const WAYS = [{ slowed: 1, times: 7, budget: 300 }, { slowed: 4, times: 3, budget: 1000 }];

async function once(slowed) {
  const browser = await startBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    if (slowed > 1) await (await page.context().newCDPSession(page)).send("Emulation.setCPUThrottlingRate", { rate: slowed });
    await page.goto(pageAddress);
    for (let turn = 0; turn < 600; turn += 1) {
      const seen = await page.evaluate(() => [performance.getEntriesByName("answer")[0]?.startTime, document.documentElement.dataset.state]);
      if (seen[1] === "failed") throw new Error("the page failed");
      if (seen[0]) return seen[0];
      await new Promise((next) => setTimeout(next, 25));
    }
    throw new Error("no answer in 15 s");
  } finally {
    await browser.close();
  }
}

for (const { slowed, times: count, budget } of WAYS) {
  const times = [];
  for (let turn = 0; turn < count; turn += 1) times.push(await once(slowed));
  times.sort((a, b) => a - b);
  const shown = times.map((time) => time.toFixed(1)).join(" ");
  const median = times[count >> 1].toFixed(1);
  console.log(`open to answer${slowed > 1 ? `, processor slowed ${slowed} times` : ""} ${median} ms of ${budget} (median of ${count}: ${shown})`);
}
