import { createGateway, type GatewaySettings } from "./gateway.ts";
import { openWholeBot } from "./whole-bot.ts";

/**
 * The whole bot on our own loopback platform. Time here goes faster than the platform's rate limits allow, so these are lifted
 * unless a test wants them.
 */
export async function openClassroom(given: Partial<GatewaySettings> = {}) {
  const limits = { globalPerSecond: 100_000, perChannel: 100_000, perChannelMs: 1000 };
  const gateway = await createGateway({ limits, ...given });
  const bot = await openWholeBot(gateway);
  await gateway.until(() => gateway.commands.has(gateway.guild.id), "commands");
  return {
    ...bot,
    gateway,
    async stop() {
      await bot.stop();
      await gateway.stop();
    },
  };
}
