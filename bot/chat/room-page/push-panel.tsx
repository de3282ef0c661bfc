import { useEffect, useState } from "preact/hooks";
import type { DoorSheet } from "../room/wire.ts";
import type { PushState } from "../room/door-wire.ts";
import { api, type Answer, type DoorFault } from "./api.ts";
import { useWords } from "./words.ts";
import { startWorker } from "./worker.ts";

/* Calls while the page is closed: the person turns them on for a device, where the teacher allows them for the class. */

const isAble = (): boolean => isSecureContext && "PushManager" in window && "Notification" in window;

/** The key by which push services know the room, as browsers take it. */
function asBytes(base64url: string): Uint8Array<ArrayBuffer> {
  const text = atob(base64url.replace(/-/g, "+").replace(/_/g, "/"));
  return Uint8Array.from(text, (sign) => sign.charCodeAt(0));
}

async function subscribe(publicKey: string): Promise<PushSubscriptionJSON | "blocked" | "failed"> {
  if ((await Notification.requestPermission()) !== "granted") return "blocked";
  const worker = await startWorker();
  if (!worker) return "failed";
  await navigator.serviceWorker.ready;
  try {
    // One for another key, of a room that was set up anew, is of no use.
    await (await worker.pushManager.getSubscription())?.unsubscribe();
    const made = await worker.pushManager.subscribe({
      userVisibleOnly: true,
      applicationServerKey: asBytes(publicKey),
    });
    return made.toJSON();
  } catch {
    return "failed";
  }
}

/** Whether this browser has its part still, and for this key: a reset of the page's rights tells no page. */
async function hasSubscription(publicKey: string): Promise<boolean> {
  if (!isAble()) return false;
  const worker = await navigator.serviceWorker.getRegistration();
  const key = (await worker?.pushManager.getSubscription())?.options.applicationServerKey;
  return key != null && String(new Uint8Array(key)) === String(asBytes(publicKey));
}

export function PushPanel() {
  const { push, doorFaults } = useWords();
  const [state, setState] = useState<PushState | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  async function take(answer: Answer<PushState>): Promise<void> {
    setSaid(answer.ok ? null : doorFaults[answer.code]);
    if (!answer.ok) return;
    const { isOn, publicKey } = answer.value;
    setState({ ...answer.value, isOn: isOn && (await hasSubscription(publicKey)) });
  }
  useEffect(() => void api.push().then(take), []);
  async function turnOn(publicKey: string): Promise<void> {
    setBusy(true);
    const made = await subscribe(publicKey);
    if (typeof made === "string") setSaid(made === "blocked" ? push.blocked : push.failed);
    else await take(await api.pushOn(made));
    setBusy(false);
  }
  async function turnOff(): Promise<void> {
    setBusy(true);
    const worker = await navigator.serviceWorker.getRegistration();
    await (await worker?.pushManager.getSubscription())?.unsubscribe();
    await take(await api.pushOff());
    setBusy(false);
  }
  return (
    <div class="keys">
      <p>{push.lead}</p>
      {said !== null && (
        <p class="fault" role="alert">
          {said}
        </p>
      )}
      {state && !state.isAllowed && <p class="hint">{push.notAllowed}</p>}
      {state?.isAllowed && !isAble() && <p class="hint">{push.noWay}</p>}
      {state?.isAllowed && isAble() && (
        <>
          <p role="status">{state.isOn ? push.isOn : push.isOff}</p>
          <button
            type="button"
            class={`key ${state.isOn ? "" : "main"}`}
            disabled={isBusy}
            onClick={() => void (state.isOn ? turnOff() : turnOn(state.publicKey))}
          >
            {isBusy ? push.wait : state.isOn ? push.turnOff : push.turnOn}
          </button>
        </>
      )}
    </div>
  );
}

/** The teacher's word on it, with what it means said plainly. */
export function PushAllowed({ sheet, reload }: { sheet: DoorSheet; reload: () => Promise<void> }) {
  const { push, doorFaults } = useWords();
  const [fault, setFault] = useState<DoorFault | null>(null);
  const { isPushAllowed } = sheet;
  return (
    <>
      <h3>{push.allowTitle}</h3>
      {fault && (
        <p class="fault" role="alert">
          {doorFaults[fault]}
        </p>
      )}
      <p role="status">
        <strong>{isPushAllowed ? push.allowed : push.forbidden}</strong>
      </p>
      <p class="with-key">
        <button
          type="button"
          class="key"
          onClick={() =>
            void api
              .pushAllow(!isPushAllowed)
              .then((answer) => (answer.ok ? reload() : setFault(answer.code)))
          }
        >
          {isPushAllowed ? push.forbid : push.allow}
        </button>
        <span class="hint">{push.allowLead}</span>
      </p>
    </>
  );
}
