import Database from "better-sqlite3";
import { findDamage } from "./damage.ts";

/* A process of its own: says on its output what is broken in the store it is given; nothing where that is whole. */

const db = new Database(process.argv[2], { fileMustExist: true, readonly: true, timeout: 5000 });
process.stdout.write(findDamage(db) ?? "");
db.close();
