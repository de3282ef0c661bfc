import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { startProcess } from "../support/process.ts";
import { createTwinWith } from "../support/twin.ts";

/* The built process on a platform that others wrote (discord-digital-twin, MIT), as an operator runs it. */

async function openProcess({ token, api }: { readonly token: string; readonly api: string }) {
  const data = mkdtempSync(join(tmpdir(), "sinkside-twin-process-"));
  const begin = () => startProcess(data, { DISCORD_TOKEN: token, DISCORD_API_URL: api, LOG_LEVEL: "info" });
  let running = begin();
  await running.ready;
  return {
    fatal: [],
    output: (): string => running.output(),
    /** As by a power cut. */
    async killAndStartAnew(): Promise<void> {
      await running.kill("SIGKILL");
      running = begin();
      await running.ready;
    },
    stop: async (): Promise<void> => void (await running.kill("SIGTERM")),
  };
}

test("a film in its thread, through a kill, and what others meet meanwhile", async () => {
  const twin = await createTwinWith(openProcess);
  try {
    const { iris, mina, bot } = twin;
    const times = { temp: "20C", time: "9:00", speed: 400 };
    const film = "Lantern 400";
    await twin.slash(iris, "staff-sheet add", { film, developer: "House MQ", dilution: "1+1", ...times });
    await twin.slash(iris, "staff-tank add", { numbers: "1-2", reels: 1, volume: "300 ml" });
    const setup = await twin.slash(iris, "staff-class setup", { threads: "yes" });
    expect(setup).toContain("- A thread for each run: yes, for runs started in the class channel");
    expect(await twin.slash(mina, "plan make", { film, temp: "20C", tank: "1" })).toContain(
      "**9:00** at 20 °C",
    );
    expect(await twin.press(mina, "Start")).toContain("Pour in the developer");
    await twin.told("Your calls come in");
    const [thread] = await twin.threads();
    const isCalled = async (what: string): Promise<boolean> =>
      (await twin.messages(thread?.id)).some(
        ({ content }) => content.includes(`<@${mina}>`) && content.includes(what),
      );
    await twin.press(mina, "Tank is full");
    await expect.poll(() => isCalled("**Agitate 30 s.**")).toBe(true);

    await bot.killAndStartAnew();
    await expect.poll(() => bot.output()).toContain("connected to Discord");
    await twin.slash(mina, "run correct", { run: "R1", ago: "55" });
    await expect.poll(() => isCalled("**Agitate 5 s.**")).toBe(true);
    expect((await twin.threads()).map(({ name }) => name)).toEqual(["R1, tank 1 · Lantern 400"]);

    expect(await twin.slash(mina, "staff-class setup", {})).toContain("Only the teacher may use");
    await twin.slash(iris, "plan make", { film, temp: "20C", tank: "1" });
    expect(await twin.slash(iris, "run start", {})).toContain("Tank 1 is in use by mina (R1)");
    expect(await twin.slash(iris, "run start", { plan: "P1" })).toContain("P1 is mina's plan");
    expect(await twin.slash(iris, "class board", {})).toContain("1 tank in use");
  } finally {
    await twin.stop();
  }
});
