import { findDamageAt } from "../../store/upkeep.ts";

/* A process of its own: says on its output what is broken in the store it is given; nothing where that is whole. */

process.stdout.write(findDamageAt(process.argv[2] ?? "") ?? "");
