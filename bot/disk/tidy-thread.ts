import { parentPort, workerData } from "node:worker_threads";
import Database from "better-sqlite3";

/* The thread of a tidier (tidier.ts): at each word it moves what it can without making anybody wait, and says how it went. */

const { path } = workerData as { readonly path: string };
let db: Database.Database | undefined;

/** What went wrong; null: nothing. */
function tidy(): string | null {
  try {
    db ??= new Database(path, { fileMustExist: true, timeout: 0 });
    db.pragma("wal_checkpoint(PASSIVE)");
    return null;
  } catch (error) {
    return String(error);
  }
}

parentPort?.on("message", (word: "tidy" | "stop") => {
  if (word === "tidy") return parentPort?.postMessage(tidy());
  db?.close();
  parentPort?.close();
});
