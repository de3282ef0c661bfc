import { makeChatKey } from "../../../store/shapes/chat-key.ts";
import { createHash, randomBytes, randomInt, scrypt, timingSafeEqual, type ScryptOptions } from "node:crypto";

/* Codes, tokens and passphrases of the room's door. */

/** No letter or digit that is read as another one: no 0 o 1 l i, no u beside v. */
const SIGNS = "abcdefghjkmnpqrstvwxyz23456789";

function drawSigns(count: number): string {
  return Array.from({ length: count }, () => SIGNS[randomInt(SIGNS.length)]).join("");
}

/** Six signs, shown as `k3m-t7p`: 7e8 of them, with attempts limited. */
export function drawJoinCode(): string {
  return drawSigns(6);
}

/** Three groups of four signs, `kfm4-7tpx-w2ra`: about 58 bits. */
export function drawPassphrase(): string {
  return [drawSigns(4), drawSigns(4), drawSigns(4)].join("-");
}

/** What people type, without case, spaces and dashes. */
export function foldCode(typed: string): string {
  return typed.toLowerCase().replace(/[^a-z0-9]/g, "");
}

export function showJoinCode(code: string): string {
  return `${code.slice(0, 3)}-${code.slice(3)}`.toUpperCase();
}

export function drawToken(): string {
  return randomBytes(32).toString("base64url");
}

/** `room:` and ten signs: tells nothing of the person. */
export function drawPersonId(): string {
  return makeChatKey("room", drawSigns(10));
}

export function hashToken(token: string): string {
  return createHash("sha256").update(token).digest("hex");
}

/** Light, as such costs go: a passphrase drawn here has 58 bits, which no list of guesses holds. */
const COST: ScryptOptions = { N: 2 ** 14, r: 8, p: 1, maxmem: 64 * 2 ** 20 };

function derive(passphrase: string, salt: Buffer): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(foldCode(passphrase), salt, 32, COST, (error, key) => (error ? reject(error) : resolve(key)));
  });
}

export async function hashPassphrase(passphrase: string): Promise<string> {
  const salt = randomBytes(16);
  return `scrypt$${salt.toString("base64url")}$${(await derive(passphrase, salt)).toString("base64url")}`;
}

/** False for a wrong passphrase and for a hash it cannot read. */
export async function isPassphrase(typed: string, hash: string | undefined): Promise<boolean> {
  const [scheme, salt, key] = (hash ?? "").split("$");
  const expected = Buffer.from(key ?? "", "base64url");
  // Worked out even where there is nothing to compare with, so that the time it takes tells nothing.
  const given = await derive(typed, Buffer.from(salt ?? "", "base64url"));
  return scheme === "scrypt" && expected.length === given.length && timingSafeEqual(given, expected);
}
