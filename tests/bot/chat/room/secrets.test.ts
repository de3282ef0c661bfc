import { expect, test } from "vitest";
import {
  drawJoinCode,
  drawPassphrase,
  foldCode,
  hashPassphrase,
  isPassphrase,
  showJoinCode,
} from "../../../../bot/chat/room/secrets.ts";

test("codes hold no sign that is read as another one", () => {
  for (let round = 0; round < 200; round += 1) {
    expect(drawJoinCode()).toMatch(/^[a-hjkmnp-tv-z2-9]{6}$/);
    expect(drawPassphrase()).toMatch(/^(?:[a-hjkmnp-tv-z2-9]{4}-){2}[a-hjkmnp-tv-z2-9]{4}$/);
  }
});

test("a code is shown in two halves and read back in any form", () => {
  expect(showJoinCode("k3mt7p")).toBe("K3M-T7P");
  expect(foldCode(" k3m t7p ")).toBe("k3mt7p");
  expect(foldCode(showJoinCode("k3mt7p"))).toBe("k3mt7p");
});

test("a passphrase opens its own hash only, whatever its case and dashes", async () => {
  const hash = await hashPassphrase("kfm4-7tpx-w2ra");
  expect(hash).not.toContain("kfm4");
  expect(await isPassphrase("KFM4 7TPX W2RA", hash)).toBe(true);
  expect(await isPassphrase("kfm4-7tpx-w2rb", hash)).toBe(false);
  expect(await hashPassphrase("kfm4-7tpx-w2ra")).not.toBe(hash);
});

test("no hash and a broken hash open to nothing, not even to nothing typed", async () => {
  for (const hash of [undefined, "", "scrypt$$", "plain$a$b", "scrypt$AAAA$"]) {
    expect(await isPassphrase("", hash)).toBe(false);
    expect(await isPassphrase("anything", hash)).toBe(false);
  }
});
