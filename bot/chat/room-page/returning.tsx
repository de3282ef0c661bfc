import { useEffect, useState } from "preact/hooks";
import type { ReturnCode } from "../room/door-wire.ts";
import { api, type Answer, type DoorFault } from "./api.ts";
import type { DoorProps } from "./door-props.ts";
import { Field } from "./field.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { sayMinute } from "./instant.ts";
import { useWords } from "./words.ts";

/* A person's place on another device: the code on the old one, the door of the new one, and the last question before leaving. */

/** For whoever is of the class already: their code is all that is asked. */
export function ReturnDoor({
  code: given,
  onNew,
  isBusy,
  enter,
}: DoorProps & { code: string; onNew: () => void }) {
  const { door, returning } = useWords();
  const [code, setCode] = useState(given);
  return (
    <form
      class="door-card"
      onSubmit={(event) => {
        event.preventDefault();
        void enter("", api.return(code));
      }}
    >
      <h2>{returning.been}</h2>
      <p>{returning.lead}</p>
      <Field
        label={returning.code}
        hint={returning.codeHint}
        value={code}
        onValue={setCode}
        autoComplete="one-time-code"
        isCode
        isRequired
      />
      <button class="key main" disabled={isBusy}>
        {isBusy ? door.wait : returning.goOn}
      </button>
      <button class="quiet" type="button" onClick={onNew}>
        {returning.new}
      </button>
    </form>
  );
}

/** The code with its picture: one's own, or, where `personId` is given, that of somebody of the class. */
export function ReturnPanel({ personId }: { personId?: string }) {
  const { returning, doorFaults } = useWords();
  const zone = useRoomPart((state) => state.facts?.class.zone);
  const [given, setGiven] = useState<ReturnCode | null>(null);
  const [fault, setFault] = useState<DoorFault | null>(null);
  const draw = async (): Promise<void> => {
    const answer: Answer<ReturnCode> = await (personId === undefined ? api.ownCode() : api.codeFor(personId));
    setFault(answer.ok ? null : answer.code);
    if (answer.ok) setGiven(answer.value);
  };
  useEffect(() => void draw(), [personId]);
  if (fault)
    return (
      <p class="fault" role="alert">
        {doorFaults[fault]}
      </p>
    );
  if (!given) return null;
  return (
    <div class="keys">
      <figure class="join-code">
        <span class="qr">
          <CodePicture {...given.picture} />
        </span>
        <figcaption>
          <span>{(personId === undefined ? returning.show : returning.showFor)(given.name)}</span>
          <strong class="code" role="status">
            {given.code}
          </strong>
          <span>{returning.until(sayMinute(given.until, zone))}</span>
        </figcaption>
      </figure>
      <p>{returning.how}</p>
      <p class="hint">{personId === undefined ? returning.stays : returning.onlyThem(given.name)}</p>
      <button type="button" class="key" onClick={() => void draw()}>
        {returning.another}
      </button>
    </div>
  );
}

/** Four modules of quiet around it, as its standard (ISO/IEC 18004) asks. */
const QUIET = 4;

function CodePicture({ size, bits }: ReturnCode["picture"]) {
  const dark = [...bits].flatMap((bit, at) =>
    bit === "1" ? `M${(at % size) + QUIET} ${Math.floor(at / size) + QUIET}h1v1h-1z` : [],
  );
  const side = size + 2 * QUIET;
  return (
    <svg class="code-picture" viewBox={`0 0 ${side} ${side}`} shape-rendering="crispEdges" aria-hidden="true">
      <path fill="#fff" d={`M0 0h${side}v${side}h-${side}z`} />
      <path fill="#000" d={dark.join("")} />
    </svg>
  );
}

/** Signs this device out; while a film runs it asks first. */
export function LeaveKey() {
  const { menu, returning } = useWords();
  const room = useRoom();
  const [isAsking, setAsking] = useState(false);
  const leave = async (isSure: boolean): Promise<void> => {
    const left = await api.leave(isSure);
    if (!left.ok && left.code === "ERR_RUN_OPEN") setAsking(true);
    else await room.enter();
  };
  if (!isAsking)
    return (
      <button type="button" class="key danger" onClick={() => void leave(false)}>
        {menu.leave}
      </button>
    );
  return (
    <div class="secrets" role="alertdialog" aria-label={returning.leaveRun}>
      <p>
        <strong>{returning.leaveRun}</strong>
      </p>
      <p>{returning.leaveRunLead}</p>
      <p class="chips">
        <button type="button" class="key main" autofocus onClick={() => setAsking(false)}>
          {returning.stay}
        </button>
        <button type="button" class="key danger" onClick={() => void leave(true)}>
          {returning.leaveAnyway}
        </button>
      </p>
    </div>
  );
}
