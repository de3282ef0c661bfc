import { createDeliverer } from "../../../bot/deliver/deliver.ts";
import { createDirectory } from "../../../bot/chat/discord/directory.ts";
import { createDispatch } from "../../../bot/calls/dispatch.ts";
import { createDiscord } from "../../../bot/chat/discord/discord.ts";
import { renderPicture } from "../../../bot/chat/picture.ts";
import { settleDue } from "../../../bot/cues/tick.ts";
import { roleOfMember } from "../../../commands/class/roles.ts";
import { commands } from "../../../commands/index.ts";
import { openStores } from "../../../store/index.ts";
import { createFakeClock } from "../clock.ts";
import { createMemoryLog } from "../room.ts";
import { createGateway, type GatewaySettings } from "./gateway.ts";

/**
 * The whole bot but its beat, on the loopback platform: real commands, real store in memory, a clock told by hand.
 * Time here goes faster than the platform's rate limits allow, so these are lifted unless a test wants them.
 */
export async function openClassroom(given: Partial<GatewaySettings> = {}) {
  const limits = { globalPerSecond: 100_000, perChannel: 100_000, perChannelMs: 1000 };
  const gateway = await createGateway({ limits, ...given });
  const clock = createFakeClock();
  const log = createMemoryLog();
  const stores = openStores(":memory:");
  const port = createDiscord({
    token: gateway.token,
    api: gateway.api,
    commands,
    log,
    clock,
    directory: createDirectory(stores, clock),
    renderPicture,
    roleOf: (member) => roleOfMember(stores.classes.find(`discord:${member.guildId}`)?.habits, member),
  });
  const dispatch = createDispatch({ commands, stores, clock, log });
  const ports = new Map([["discord", port]]);
  const deliverer = createDeliverer({ stores, clock, log, ports, onOutcome: () => {} });
  await port.start({
    ...dispatch,
    onFatal: (sentence) => log.error({}, sentence),
  });
  await gateway.until(() => gateway.commands.has(gateway.guild.id), "commands");

  async function tick(): Promise<void> {
    settleDue({ stores, log }, clock.now());
    deliverer.pump();
    await deliverer.drain(5000);
  }

  return {
    gateway,
    clock,
    log,
    stores,
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
      await gateway.stop();
    },
  };
}
