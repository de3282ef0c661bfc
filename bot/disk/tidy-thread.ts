import { parentPort, workerData } from "node:worker_threads";
import { openTidying } from "../../store/upkeep.ts";

/* The thread of a tidier (tidier.ts): at each word it moves what it can without making anybody wait, and says how it went. */

const { path } = workerData as { readonly path: string };
let store: ReturnType<typeof openTidying> | undefined;

/** What went wrong; null: nothing. */
function tidy(): string | null {
  try {
    store ??= openTidying(path);
    store.tidy();
    return null;
  } catch (error) {
    return String(error);
  }
}

parentPort?.on("message", (word: "tidy" | "stop") => {
  if (word === "tidy") return parentPort?.postMessage(tidy());
  store?.close();
  parentPort?.close();
});
