import { networkInterfaces } from "node:os";

/* Under which addresses the room is found, and from which it listens to a browser. */

const LOOPBACK = new Set(["127.0.0.1", "localhost", "::1"]);

export function isLoopback(host: string): boolean {
  return LOOPBACK.has(host);
}

/** `192.168.1.20:8080` -> `192.168.1.20`; `[::1]:8080` -> `::1`. Undefined for what is no host at all. */
export function hostnameOf(hostHeader: string | undefined): string | undefined {
  if (!hostHeader || !URL.canParse(`http://${hostHeader}`)) return undefined;
  return new URL(`http://${hostHeader}`).hostname.replace(/^\[|\]$/g, "");
}

/**
 * The addresses to show to a class: the stated one, those the certificate holds for (null: there is none, and no https),
 * or each of this computer's own.
 */
export function addressesOf(
  host: string,
  port: number,
  publicUrl: string | null,
  certifiedNames: readonly string[] | null = null,
): string[] {
  const scheme = certifiedNames === null ? "http" : "https";
  const addressAt = (name: string): string =>
    `${scheme}://${name.includes(":") ? `[${name}]` : name}:${port}`;
  if (publicUrl !== null) return [publicUrl.replace(/\/$/, "")];
  if (isLoopback(host)) return [addressAt("127.0.0.1")];
  const named = (certifiedNames ?? []).filter((name) => !name.startsWith("*."));
  if (named.length > 0) return named.map(addressAt);
  if (host !== "0.0.0.0" && host !== "::") return [addressAt(host)];
  const own = Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal)
    .map(({ address }) => addressAt(address));
  return own.length > 0 ? own : [addressAt("127.0.0.1")];
}

/**
 * Whether a browser that names this host and origin may be listened to. A page of another site can make a browser
 * send requests here, but not without naming its own origin; on loopback a foreign host name means the same trick
 * by way of the name service.
 */
export function isOwnHost(
  hostHeader: string | undefined,
  boundTo: string,
  publicUrl: string | null,
): boolean {
  const hostname = hostnameOf(hostHeader);
  if (hostname === undefined) return false;
  if (publicUrl !== null && hostname === new URL(publicUrl).hostname) return true;
  return isLoopback(boundTo) ? isLoopback(hostname) : true;
}

export function isOwnOrigin(
  origin: string | undefined,
  hostHeader: string | undefined,
  publicUrl: string | null,
): boolean {
  if (origin === undefined || !URL.canParse(origin)) return false;
  const { host, origin: clean } = new URL(origin);
  if (publicUrl !== null && clean === new URL(publicUrl).origin) return true;
  return (
    hostHeader !== undefined &&
    URL.canParse(`http://${hostHeader}`) &&
    host === new URL(`http://${hostHeader}`).host
  );
}
