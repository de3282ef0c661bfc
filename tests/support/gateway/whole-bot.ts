import { createDeliverer } from "../../../bot/deliver/deliver.ts";
import { createDirectory } from "../../../bot/chat/discord/directory.ts";
import { createDispatch } from "../../../bot/calls/dispatch.ts";
import { createDiscord } from "../../../bot/chat/discord/discord.ts";
import { renderPicture } from "../../../bot/chat/picture.ts";
import { settleDue } from "../settle.ts";
import { roleOfMember } from "../../../commands/class/roles.ts";
import { commands } from "../../../commands/index.ts";
import { openStores } from "../../../store/index.ts";
import { createFakeClock } from "../clock.ts";
import { createMemoryLog } from "../room.ts";

/** The whole bot but its beat and its process, on a platform on loopback: real commands, a store in memory, a clock told by hand. */
export async function openWholeBot({ token, api }: { readonly token: string; readonly api: string }) {
  const clock = createFakeClock();
  const log = createMemoryLog();
  const stores = openStores(":memory:");
  const fatal: string[] = [];
  const port = createDiscord({
    token,
    api,
    commands,
    log,
    clock,
    directory: createDirectory(stores, clock),
    renderPicture,
    times: { tidyMs: 50 },
    roleOf: (member) => roleOfMember(stores.classes.find(`discord:${member.guildId}`)?.habits, member),
  });
  const dispatch = createDispatch({ commands, stores, clock, log });
  const ports = new Map([["discord", port]]);
  const deliverer = createDeliverer({ stores, clock, log, ports, onOutcome: () => {} });
  await port.start({
    ...dispatch,
    onFatal(sentence) {
      fatal.push(sentence);
      log.error({}, sentence);
    },
  });

  async function tick(): Promise<void> {
    settleDue({ stores, log }, clock.now());
    deliverer.pump();
    await deliverer.drain(5000);
  }

  return {
    clock,
    log,
    stores,
    fatal,
    tick,
    /** Seconds go by, with the bot awake. */
    async pass(seconds: number) {
      for (let second = 0; second < seconds; second += 1) {
        clock.advance(1);
        await tick();
      }
    },
    async stop() {
      await port.stop();
      stores.close();
    },
  };
}
