import type { DoorProps } from "./door-props.ts";
import { useState } from "preact/hooks";
import { api, type Answer, type DoorFault } from "./api.ts";
import { Field } from "./field.tsx";
import { rememberHere, readKept } from "./kept.ts";
import { ReturnDoor } from "./returning.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { Said } from "./said.tsx";
import { useWords } from "./words.ts";

/** The code of a QR picture stands behind the `#`, which a browser sends to nobody. */
function fromAddress(key: "code" | "return"): string {
  return new URLSearchParams(location.hash.slice(1)).get(key) ?? "";
}

interface DoorPageProps {
  readonly demo: { readonly className: string } | null;
  onGuide(): void;
}

export function DoorPage({ demo, onGuide }: DoorPageProps) {
  const words = useWords();
  const room = useRoom();
  const farewell = useRoomPart((state) => state.farewell);
  const [wantsCode, setWantsCode] = useState(
    demo === null || fromAddress("code") !== "" || fromAddress("return") !== "",
  );
  const [isReturning, setReturning] = useState(fromAddress("return") !== "");
  const [isBusy, setBusy] = useState(false);
  const [fault, setFault] = useState<DoorFault | null>(null);

  async function enter(name: string, asking: Promise<Answer<unknown>>): Promise<void> {
    setBusy(true);
    setFault(null);
    const answer = await asking;
    if (answer.ok) {
      if (name !== "") rememberHere("name", name);
      history.replaceState(null, "", location.pathname);
      await room.enter();
    } else setFault(answer.code);
    setBusy(false);
  }

  const shared = { isBusy, enter };
  return (
    <main class="door">
      <header class="door-head">
        <div class="sprockets" aria-hidden="true" />
        <h1>{words.name}</h1>
        <p>{words.door.lead}</p>
      </header>
      {farewell !== null && (
        <div class="farewell" role="status">
          <Said text={farewell} />
        </div>
      )}
      {fault && (
        <p class="fault" role="alert">
          {words.doorFaults[fault]}
        </p>
      )}
      {demo && !wantsCode ? (
        <DemoDoor className={demo.className} onGuide={onGuide} {...shared} />
      ) : isReturning ? (
        <ReturnDoor code={fromAddress("return")} onNew={() => setReturning(false)} {...shared} />
      ) : (
        <CodeDoor onReturn={() => setReturning(true)} {...shared} />
      )}
      {demo && (
        <button class="quiet" type="button" onClick={() => setWantsCode(!wantsCode)}>
          {wantsCode ? words.door.demoTitle : words.door.ownClass}
        </button>
      )}
    </main>
  );
}

function DemoDoor({
  className,
  onGuide,
  isBusy,
  enter,
}: DoorProps & { className: string; onGuide: () => void }) {
  const { classCalled, door, guide } = useWords();
  const language = useRoomPart((state) => state.language);
  const [name, setName] = useState(readKept("name", ""));
  return (
    <form
      class="door-card"
      onSubmit={(event) => {
        event.preventDefault();
        void enter(name, api.joinDemo(name, "student", language));
      }}
    >
      <h2>{door.demoTitle}</h2>
      <p>
        <strong>{classCalled(className)}</strong>
        <br />
        {door.demoLead}
      </p>
      <Field label={door.yourName} value={name} onValue={setName} autoComplete="nickname" isRequired />
      <button class="key main" disabled={isBusy}>
        {isBusy ? door.wait : door.demoStudent}
      </button>
      <button
        class="key"
        type="button"
        disabled={isBusy}
        onClick={() => void enter("", api.joinDemo(door.demoTeacherName, "teacher", language))}
      >
        {door.demoTeacher}
      </button>
      <button class="key" type="button" onClick={onGuide}>
        {guide.show}
      </button>
      <p class="hint">{guide.showHint}</p>
    </form>
  );
}

function CodeDoor({ isBusy, enter, onReturn }: DoorProps & { onReturn: () => void }) {
  const { door, returning } = useWords();
  const [isStaff, setStaff] = useState(false);
  const [code, setCode] = useState(fromAddress("code"));
  const [name, setName] = useState(readKept("name", ""));
  const [passphrase, setPassphrase] = useState("");
  return (
    <form
      class="door-card"
      onSubmit={(event) => {
        event.preventDefault();
        void enter(name, isStaff ? api.joinStaff(code, name, passphrase) : api.join(code, name));
      }}
    >
      <h2>{door.title}</h2>
      <Field
        label={door.code}
        hint={door.codeHint}
        value={code}
        onValue={setCode}
        autoComplete="off"
        isCode
        isRequired
      />
      <Field
        label={door.yourName}
        hint={door.nameHint}
        value={name}
        onValue={setName}
        autoComplete="nickname"
        isRequired
      />
      {isStaff && (
        <Field
          label={door.passphrase}
          hint={door.passphraseHint}
          value={passphrase}
          onValue={setPassphrase}
          type="password"
          autoComplete="current-password"
          isRequired
        />
      )}
      <button class="key main" disabled={isBusy}>
        {isBusy ? door.wait : isStaff ? door.joinStaff : door.join}
      </button>
      <button class="quiet" type="button" onClick={() => setStaff(!isStaff)}>
        {isStaff ? door.asStudent : door.asStaff}
      </button>
      {!isStaff && (
        <button class="quiet" type="button" onClick={onReturn}>
          {returning.been}
        </button>
      )}
    </form>
  );
}
