/*
 * Wrong tries at the door. A class sits behind one address, so an address is not shut for its typing errors: each device has
 * tries of its own, and longer and longer waits after them. Only where one address tries far more than a class can mistype do
 * its new devices wait their turn; a device that was there before, and has not failed, is heard all the same.
 */

/** So many wrong tries of one device are human. */
const FREE_TRIES = 10;
const FIRST_WAIT_MS = 5_000;
const LONGEST_WAIT_MS = 5 * 60_000;
/** Wrong tries of one address that thirty people may make at a lesson's start; they are forgiven within five minutes. */
const STORM_TRIES = 120;
const FORGIVEN_EACH_MS = (5 * 60_000) / STORM_TRIES;
/** In a storm all others of its address share one try in so long: a code holds out for many years then. */
const STORM_TURN_MS = 1000;
const MOST_DEVICES = 20_000;

export interface Knock {
  /** What names the device; undefined where it named itself by nothing. */
  readonly device: string | undefined;
  readonly address: string;
}

export interface Tries {
  /** A name for a device that has none, known from now on. */
  meet(device: string, now: number): void;
  /** How long it is to wait until it is heard, in ms; 0: it is heard now. */
  waitMs(knock: Knock, now: number): number;
  /** It was heard, and what it tried was wrong. */
  wrong(knock: Knock, now: number): void;
}

interface Device {
  readonly metAt: number;
  failures: number;
  shutUntil: number;
}

interface Address {
  /** Wrong tries that are not forgiven yet, as of `at`. */
  failures: number;
  at: number;
  stormSince: number | null;
  turnAt: number;
}

/** `onStorm` hears of each storm once, as it begins. */
export function createTries(onStorm: (address: string) => void): Tries {
  const devices = new Map<string, Device>();
  const addresses = new Map<string, Address>();

  function meet(name: string, now: number): Device {
    const known = devices.get(name);
    if (known) return known;
    const met = { metAt: now, failures: 0, shutUntil: 0 };
    devices.set(name, met);
    // The longest known one goes.
    if (devices.size > MOST_DEVICES) devices.delete(devices.keys().next().value ?? "");
    return met;
  }

  function lookAt(address: string, now: number): Address {
    const found = addresses.get(address) ?? { failures: 0, at: now, stormSince: null, turnAt: 0 };
    const failures = Math.max(0, found.failures - Math.max(0, now - found.at) / FORGIVEN_EACH_MS);
    // A storm is over once half of it is forgiven.
    const stormSince = failures < STORM_TRIES / 2 ? null : found.stormSince;
    const seen = { ...found, failures, at: now, stormSince };
    if (failures === 0) addresses.delete(address);
    else addresses.set(address, seen);
    return seen;
  }

  return {
    meet: (device, now) => void meet(device, now),
    waitMs({ device, address }, now) {
      const known = device === undefined ? undefined : meet(device, now);
      if (known && known.shutUntil > now) return known.shutUntil - now;
      const { stormSince, turnAt } = lookAt(address, now);
      if (stormSince === null) return 0;
      if (known && known.failures === 0 && known.metAt < stormSince) return 0;
      if (turnAt > now) return turnAt - now;
      addresses.set(address, { ...lookAt(address, now), turnAt: now + STORM_TURN_MS });
      return 0;
    },
    wrong({ device, address }, now) {
      const known = device === undefined ? undefined : meet(device, now);
      if (known) {
        known.failures += 1;
        const beyond = known.failures - FREE_TRIES;
        if (beyond >= 0) known.shutUntil = now + Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** beyond);
      }
      const seen = lookAt(address, now);
      const failures = seen.failures + 1;
      const isStorm = seen.stormSince === null && failures > STORM_TRIES;
      addresses.set(address, { ...seen, failures, stormSince: isStorm ? now : seen.stormSince });
      if (isStorm) onStorm(address);
    },
  };
}
