import { lookup } from "node:dns";
import { Agent } from "node:https";
import { BlockList, isIP, type LookupFunction } from "node:net";

/*
 * Where this process may be made to call: a phone names its push service's address itself, so nothing inside the school's own
 * network may be meant by it.
 */

/** Not the internet: this computer, private networks, and what is set aside (IANA special-purpose registries, RFC 6890). */
const INSIDE = new BlockList();
for (const [net, bits] of [
  ["0.0.0.0", 8],
  ["10.0.0.0", 8],
  ["100.64.0.0", 10],
  ["127.0.0.0", 8],
  ["169.254.0.0", 16],
  ["172.16.0.0", 12],
  ["192.0.0.0", 24],
  ["192.0.2.0", 24],
  ["192.168.0.0", 16],
  ["198.18.0.0", 15],
  ["198.51.100.0", 24],
  ["203.0.113.0", 24],
  ["224.0.0.0", 3],
] as const)
  INSIDE.addSubnet(net, bits, "ipv4");
/** Of the sixth version only what is routed at all (2000::/3), less documentation and ways back to the fourth. */
const OUTSIDE6 = new BlockList();
OUTSIDE6.addSubnet("2000::", 3, "ipv6");
const INSIDE6 = new BlockList();
for (const [net, bits] of [
  ["2001::", 23],
  ["2001:db8::", 32],
  ["2002::", 16],
] as const)
  INSIDE6.addSubnet(net, bits, "ipv6");

export function isInside(address: string): boolean {
  const bare = address.replace(/^\[|\]$/g, "");
  if (isIP(bare) === 4) return INSIDE.check(bare, "ipv4");
  return !OUTSIDE6.check(bare, "ipv6") || INSIDE6.check(bare, "ipv6");
}

const MOST_CHARACTERS = 1000;

/** Whether a push service may have this address. `ownHosts`: `name` or `name:port` of services the school runs itself. */
export function mayCall(endpoint: string, ownHosts: readonly string[]): boolean {
  if (endpoint.length > MOST_CHARACTERS || !URL.canParse(endpoint)) return false;
  const { protocol, username, password, hostname, host, port } = new URL(endpoint);
  if (protocol !== "https:" || username !== "" || password !== "") return false;
  if (ownHosts.includes(host) || ownHosts.includes(hostname)) return true;
  const isNumber = isIP(hostname.replace(/^\[|\]$/g, "")) !== 0;
  return port === "" && !isNumber && /\.[a-z][a-z0-9-]*$/i.test(hostname);
}

/** A name is looked up at each connection: one that has come to mean an address inside is not called. */
const lookupOutside: LookupFunction = (name, options, done) => {
  lookup(name, { ...options, all: true }, (error, found) => {
    const outside = error ? [] : found.filter(({ address }) => !isInside(address));
    const [first] = outside;
    if (!first) return done(error ?? new Error("its name means an address inside"), "", 0);
    if (options.all) return (done as (error: null, found: typeof outside) => void)(null, outside);
    return done(null, first.address, first.family);
  });
};

/** For connections to push services, outside but for the school's own. */
export function createAgents(ownHosts: readonly string[]): (endpoint: string) => Agent {
  const outside = new Agent({ keepAlive: true, maxSockets: 20, lookup: lookupOutside });
  const own = new Agent({ keepAlive: true, maxSockets: 20 });
  return (endpoint) => {
    const { host, hostname } = new URL(endpoint);
    return ownHosts.includes(host) || ownHosts.includes(hostname) ? own : outside;
  };
}
