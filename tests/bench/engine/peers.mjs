/*
 * The floor, and other people's timers and queues, each with the settings its own documentation gives for the least lateness
 * where it has any. Those that keep nothing note the instant and write nothing; queues note it as their handler is called,
 * before they keep that it was.
 */
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const PORTION = 5000;

/** From the folder the peers were installed into. */
async function load(folder, name) {
  const path = createRequire(`${folder}/package.json`).resolve(name);
  const found = await import(pathToFileURL(path));
  return found.default && typeof found.default === "object" ? { ...found.default, ...found } : found;
}

/** The floor: one timer of the runtime each, rounded up so that none is early by design. */
export function plainTimeouts() {
  return {
    async arm(dues, fire) {
      for (const due of dues) setTimeout(fire, Math.ceil(due - Date.now()), due);
    },
  };
}

export async function nodeSchedule({ peers }) {
  const { scheduleJob } = await load(peers, "node-schedule");
  return {
    async arm(dues, fire) {
      for (const due of dues) scheduleJob(new Date(due), () => fire(due));
    },
  };
}

export async function croner({ peers }) {
  const { Cron } = await load(peers, "croner");
  let jobs = [];
  return {
    async arm(dues, fire) {
      jobs = dues.map((due) => new Cron(new Date(due), () => fire(due)));
    },
    async stop() {
      for (const job of jobs) job.stop();
    },
  };
}

export async function bullmq({ peers, redisPort }) {
  const { Queue, Worker } = await load(peers, "bullmq");
  const connection = { host: "127.0.0.1", port: redisPort, maxRetriesPerRequest: null };
  const queue = new Queue("bench", { connection });
  const workOn = (fire) =>
    new Worker("bench", async ({ data }) => fire(data.due), { connection, concurrency: 100 });
  let worker;
  return {
    async arm(dues, fire) {
      for (const some of portions(dues))
        await queue.addBulk(
          some.map((due) => ({ name: "t", data: { due }, opts: { delay: Math.max(0, due - Date.now()) } })),
        );
      worker = workOn(fire);
      await worker.waitUntilReady();
    },
    async resume(fire) {
      worker = workOn(fire);
    },
    async stop() {
      await Promise.all([worker.close(true), queue.close()]);
    },
  };
}

export async function pgBoss({ peers, databaseUrl, together }) {
  const found = await load(peers, "pg-boss");
  const PgBoss = found.PgBoss ?? found.default ?? found;
  const boss = new PgBoss(databaseUrl);
  boss.on("error", () => {});
  await boss.start();
  const workOn = (fire) =>
    boss.work("bench", { batchSize: PORTION, pollingIntervalSeconds: 0.5 }, async (jobs) => {
      together(() => jobs.forEach(({ data }) => fire(data.due)));
    });
  return {
    async arm(dues, fire) {
      await boss.createQueue("bench");
      for (const some of portions(dues))
        await boss.insert(some.map((due) => ({ name: "bench", data: { due }, startAfter: new Date(due) })));
      await workOn(fire);
    },
    resume: workOn,
    stop: () => boss.stop({ graceful: false, wait: false }),
  };
}

export async function graphileWorker({ peers, databaseUrl }) {
  const { run, makeWorkerUtils, Logger } = await load(peers, "graphile-worker");
  const logger = new Logger(() => () => {});
  const utils = await makeWorkerUtils({ connectionString: databaseUrl, logger });
  await utils.migrate();
  const workOn = (fire) =>
    run({
      connectionString: databaseUrl,
      logger,
      concurrency: 10,
      pollInterval: 100,
      noHandleSignals: true,
      taskList: { bench: async ({ due }) => fire(due) },
    });
  let runner;
  return {
    async arm(dues, fire) {
      for (const some of portions(dues))
        await utils.addJobs(
          some.map((due) => ({ identifier: "bench", payload: { due }, runAt: new Date(due) })),
        );
      runner = await workOn(fire);
    },
    async resume(fire) {
      runner = await workOn(fire);
    },
    async stop() {
      await Promise.race([runner.stop(), new Promise((resolve) => setTimeout(resolve, 2000))]);
      await utils.release();
    },
  };
}

function portions(list) {
  return Array.from({ length: Math.ceil(list.length / PORTION) }, (_, at) =>
    list.slice(at * PORTION, (at + 1) * PORTION),
  );
}
