import fc from "fast-check";

/*
 * Properties draw the same values in each run, so that a failure is a change's and not the day's. PROPERTY_SEED draws
 * others; a failing property prints its seed and its path.
 */
fc.configureGlobal({ seed: Number(process.env["PROPERTY_SEED"] ?? 20_260_116) });
