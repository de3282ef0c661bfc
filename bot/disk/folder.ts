import { mkdirSync, statSync } from "node:fs";
import { StoreError } from "../../store/open.ts";

/** @throws StoreError ERR_DATA_PATH where a file lies at the place of the data folder, or above it. */
export function refuseFile(path: string): void {
  if (isFolderOrFree(path)) return;
  throw new StoreError(
    "ERR_DATA_PATH",
    `SINKSIDE_DATA is ${path}, and a file is in the way. Set it to a folder, or move the file.`,
  );
}

/**
 * Makes the data folder where there is none yet.
 * @throws StoreError ERR_DATA_PATH as above; ERR_DATA_FOLDER where it can't be made.
 */
export function makeDataFolder(path: string): void {
  refuseFile(path);
  try {
    mkdirSync(path, { recursive: true });
  } catch (error) {
    throw new StoreError(
      "ERR_DATA_FOLDER",
      `The data folder ${path} can't be made: ${(error as Error).message}. Check the rights of the folder above it, and the disk.`,
    );
  }
}

function isFolderOrFree(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ENOTDIR";
  }
}
