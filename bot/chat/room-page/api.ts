import type { Language } from "../../../store/shapes/language.ts";
import type { PushState, ReturnCode, SinkSheet } from "../room/door-wire.ts";
import type { CommandCard } from "../room/card.ts";
import type { DoorCode, DoorSheet, DoorState } from "../room/wire.ts";

/* The few things asked over plain HTTP: the door, the command cards, the keys. */

export type DoorFault = DoorCode | "ERR_UNREACHABLE";
export type Answer<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly code: DoorFault };

async function ask<T>(path: string, body?: unknown): Promise<Answer<T>> {
  try {
    const response = await fetch(path, {
      method: body === undefined ? "GET" : "POST",
      ...(body === undefined
        ? {}
        : { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
    });
    const value = (await response.json()) as T & { error?: { code: DoorCode } };
    return response.ok ? { ok: true, value } : { ok: false, code: value.error?.code ?? "ERR_BROKE" };
  } catch {
    return { ok: false, code: "ERR_UNREACHABLE" };
  }
}

export interface ShownSecrets {
  readonly className: string;
  readonly joinCode: string;
  readonly teacherPassphrase: string;
  readonly aidePassphrase: string;
}

export const api = {
  me: () => ask<DoorState>("/api/me"),
  commands: (language: Language) => ask<readonly CommandCard[]>(`/api/commands?language=${language}`),
  join: (code: string, name: string) => ask("/api/join", { code, name }),
  joinStaff: (code: string, name: string, passphrase: string) =>
    ask("/api/staff", { code, name, passphrase }),
  joinDemo: (name: string, role: "student" | "teacher", language: Language) =>
    ask("/api/demo", { name, role, language }),
  push: () => ask<PushState>("/api/push"),
  pushOn: (subscription: PushSubscriptionJSON) => ask<PushState>("/api/push/on", subscription),
  pushOff: () => ask<PushState>("/api/push/off", {}),
  pushAllow: (isAllowed: boolean) => ask("/api/push/allow", { isAllowed }),
  sink: () => ask<SinkSheet>("/api/sink"),
  sinkChoose: (personId: string) => ask<SinkSheet>("/api/sink/choose", { personId }),
  sinkAdd: (name: string) => ask<SinkSheet>("/api/sink/add", { name }),
  sinkDone: (personId: string) => ask<SinkSheet>("/api/sink/done", { personId }),
  sinkOpen: () => ask("/api/sink/open", {}),
  sinkLock: (id: number, isLocked: boolean) => ask("/api/sink/lock", { id, isLocked }),
  sinkClose: (id: number) => ask("/api/sink/close", { id }),
  return: (code: string) => ask("/api/return", { code }),
  ownCode: () => ask<ReturnCode>("/api/return/own", {}),
  codeFor: (personId: string) => ask<ReturnCode>("/api/return/for", { personId }),
  /** Not `isSure`: refused while a film of theirs runs. */
  leave: (isSure: boolean) => ask("/api/leave", { isSure }),
  door: () => ask<DoorSheet>("/api/door"),
  rotate: (signOut: boolean) => ask<DoorSheet>("/api/door/rotate", { signOut }),
  calendar: (isOn: boolean) => ask<DoorSheet>("/api/door/calendar", { isOn }),
  free: (personId: string) => ask<DoorSheet>("/api/door/free", { personId }),
  removeDevice: (handle: string) => ask<DoorSheet>("/api/door/device", { handle }),
  passphrases: (signOut: boolean) => ask<ShownSecrets>("/api/door/passphrases", { signOut }),
  newClass: (name: string, zone: string, teacher: string, language: Language) =>
    ask<ShownSecrets>("/api/classes", { name, zone, teacher, language }),
};
