// A Firefox of the machine, driven over its own remote protocol (Marionette: length, colon, JSON).
import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { rm } from "node:fs/promises";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

const settings = [
  ["marionette.port", 0],
  ["app.update.enabled", false],
  ["browser.shell.checkDefaultBrowser", false],
  ["datareporting.policy.dataSubmissionEnabled", false],
  ["toolkit.telemetry.reportingpolicy.firstRun", false],
  ["network.captive-portal-service.enabled", false],
  ["network.connectivity-service.enabled", false],
];

export async function startFirefox() {
  const profile = mkdtempSync(join(tmpdir(), "firefox-"));
  const lines = settings.map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`);
  writeFileSync(join(profile, "user.js"), `${lines.join("\n")}\n`);
  const path = process.env.FACELOAD_FIREFOX ?? "/usr/bin/firefox-esr";
  const words = ["--headless", "--marionette", "--no-remote", "--profile", profile];
  const child = spawn(path, words, { stdio: "ignore", env: { ...process.env, HOME: profile } });
  const ended = new Promise((done) => child.once("exit", done));
  try {
    const port = await portOf(profile, child);
    const { ask, end } = await talk(port);
    await ask("WebDriver:NewSession", {});
    const close = async () => {
      await Promise.race([ask("Marionette:Quit", { flags: ["eForceQuit"] }), ended]).catch(() => {});
      end();
      await ended;
      // Its helper processes end a little later, and write until then.
      await rm(profile, { recursive: true, force: true, maxRetries: 20 });
    };
    return { ...browser(ask), close };
  } catch (error) {
    child.kill();
    throw error;
  }
}

function browser(ask) {
  const evaluate = async (script, args = []) =>
    (await ask("WebDriver:ExecuteScript", { script, args, sandbox: null })).value;
  return {
    evaluate,
    size: (width, height) => ask("WebDriver:SetWindowRect", { width, height }),
    open: async (address) => {
      await ask("WebDriver:Navigate", { url: address });
      const end = Date.now() + 15_000;
      while (Date.now() < end) {
        const state = await evaluate("return document.documentElement.dataset.state");
        if (state === "ready" || state === "failed") return state;
        await new Promise((next) => setTimeout(next, 25));
      }
      return "neither ready nor failed in 15 s";
    },
    picture: async () =>
      Buffer.from((await ask("WebDriver:TakeScreenshot", { full: true })).value, "base64"),
  };
}

async function portOf(profile, child) {
  const file = join(profile, "MarionetteActivePort");
  const end = Date.now() + 60_000;
  while (Date.now() < end && child.exitCode === null) {
    if (existsSync(file) && readFileSync(file, "utf8").trim()) return Number(readFileSync(file, "utf8"));
    await new Promise((next) => setTimeout(next, 50));
  }
  throw new Error("firefox did not start");
}

async function talk(port) {
  const socket = connect(port, "127.0.0.1");
  const waiting = new Map();
  let bytes = Buffer.alloc(0);
  let number = 0;
  let hello;
  const greeted = new Promise((done, failed) => { hello = done; socket.once("error", failed); });
  socket.on("data", (more) => {
    bytes = Buffer.concat([bytes, more]);
    for (;;) {
      const colon = bytes.indexOf(":");
      const length = Number(bytes.subarray(0, Math.max(colon, 0)).toString());
      if (colon < 0 || bytes.length < colon + 1 + length) return;
      const message = JSON.parse(bytes.subarray(colon + 1, colon + 1 + length).toString());
      bytes = bytes.subarray(colon + 1 + length);
      if (!Array.isArray(message)) { hello(); continue; }
      const [, id, error, value] = message;
      const { done, failed } = waiting.get(id);
      waiting.delete(id);
      if (error) failed(new Error(`${error.error}: ${error.message}`));
      else done(value);
    }
  });
  socket.on("close", () => {
    for (const { failed } of waiting.values()) failed(new Error("firefox closed the connection"));
  });
  await greeted;
  const ask = (name, words) => new Promise((done, failed) => {
    number += 1;
    waiting.set(number, { done, failed });
    const text = JSON.stringify([0, number, name, words]);
    socket.write(`${Buffer.byteLength(text)}:${text}`);
  });
  return { ask, end: () => socket.destroy() };
}
