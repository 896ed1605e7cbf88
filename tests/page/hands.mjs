// Two ways to use the page: by mouse, and by keyboard alone. A story is told once and walked by either.
import assert from "node:assert/strict";

/** More steps of the Tab key than the page has stops. */
const STOPS = 900;

/** A pointer that is moved, pressed and let go; what a field says is typed. */
export function mouse(page) {
  const press = (name) => page.locator(name).first().click();
  return {
    press,
    async choose(name, words) { await page.locator(name).selectOption({ label: words }); },
    async write(name, text) {
      await page.locator(name).first().click({ clickCount: 3 });
      await page.keyboard.press("Delete");
      await page.keyboard.type(text);
      // What is typed counts when the field is left; a dialog takes it when it is closed.
      if (await page.locator("dialog[open]").count() === 0) await page.locator("h1").click();
    },
    async slide(name) {
      await page.locator(name).scrollIntoViewIfNeeded();
      const { x, y, width, height } = await page.locator(name).boundingBox();
      const share = await page.locator(name).evaluate((slider) => (slider.value - slider.min) / (slider.max - slider.min));
      await page.mouse.move(x + 8 + share * (width - 16), y + height / 2);
      await page.mouse.down();
      await page.mouse.move(x + width - 4, y + height / 2, { steps: 5 });
      await page.mouse.up();
    },
  };
}

/** In the page: which key leads towards one of these parts, or that the focus is there. */
function way(name) {
  const wanted = [...document.querySelectorAll(name)].filter((part) => part.checkVisibility() && !part.disabled);
  const now = document.activeElement;
  if (wanted.length === 0) return "none";
  if (wanted.includes(now)) return "there";
  const [first] = wanted;
  // On a picture the Tab key stops once; arrows lead from part to part.
  if (first.matches(".spot") && first.parentElement === now.parentElement) return "ArrowRight";
  return now !== document.body && first.compareDocumentPosition(now) & Node.DOCUMENT_POSITION_FOLLOWING ? "Shift+Tab" : "Tab";
}

/** Tab, arrows, Enter and typing; the script clicks nothing and sets no focus. */
export function keyboard(page) {
  async function reach(name) {
    for (let step = 0; step < STOPS; step += 1) {
      const key = await page.evaluate(way, name);
      if (key === "there") return;
      assert.notEqual(key, "none", `${name} is shown and on`);
      await page.keyboard.press(key);
    }
    assert.fail(`${name} is not reached by the Tab key`);
  }
  return {
    async press(name) { await reach(name); await page.keyboard.press("Enter"); },
    async choose(name, words) {
      await reach(name);
      const chosen = () => page.locator(name).evaluate((select) => ({ at: select.selectedIndex, words: select.selectedOptions[0].text, focused: select === document.activeElement, all: [...select.options].map((one) => one.text) }));
      let now = await chosen();
      for (let step = now.all.length; step > 0 && now.words !== words; step -= 1) {
        await page.keyboard.press(now.all.indexOf(words) > now.at ? "ArrowDown" : "ArrowUp");
        now = await chosen();
        assert.ok(now.focused, `${name} keeps the focus while it is gone through`);
      }
      assert.equal(now.words, words);
    },
    async write(name, text) {
      await reach(name);
      await page.keyboard.press("Control+A");
      await page.keyboard.press("Delete");
      await page.keyboard.type(text);
      await page.keyboard.press("Tab");
    },
    async slide(name) { await reach(name); await page.keyboard.press("End"); },
  };
}
