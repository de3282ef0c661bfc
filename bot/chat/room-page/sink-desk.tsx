import { useEffect, useRef, useState } from "preact/hooks";
import type { SinkSheet } from "../room/door-wire.ts";
import { api, type Answer } from "./api.ts";
import { CommandForm } from "./command-form.tsx";
import { Field } from "./field.tsx";
import { PlanCard } from "./plan-card.tsx";
import { RunCard } from "./run-card.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { Said } from "./said.tsx";
import { Forms } from "./forms.tsx";
import { useFormDesk, useReopenedForm } from "./use-forms.ts";
import { useWords } from "./words.ts";

/* Beside the tanks of a device that is everybody's: who is next, and what one person plans and starts. */

interface ChooserProps {
  readonly sheet: SinkSheet;
  take(asking: Promise<Answer<SinkSheet>>): Promise<SinkSheet | null>;
  onChosen(personId: string): void;
}

export function Chooser({ sheet, take, onChosen }: ChooserProps) {
  const { sink } = useWords();
  const [name, setName] = useState("");
  const choose = async (asking: Promise<Answer<SinkSheet>>): Promise<void> => {
    const before = new Set(sheet.people.map(({ id }) => id));
    const next = await take(asking);
    const chosen = next?.people.find(({ id }) => !before.has(id));
    if (chosen) onChosen(chosen.id);
  };
  return (
    <>
      <h2>{sink.who}</h2>
      <p class="hint">{sink.whoLead}</p>
      <div class="sink-names">
        {sheet.names.map((each) => (
          <button
            key={each.id}
            type="button"
            class="key"
            onClick={() => void choose(api.sinkChoose(each.id))}
          >
            {each.name}
          </button>
        ))}
      </div>
      <form
        class="command-form"
        onSubmit={(event) => {
          event.preventDefault();
          void choose(api.sinkAdd(name));
        }}
      >
        <Field label={sink.add} value={name} onValue={setName} isRequired />
        <button class="key">{sink.addKey}</button>
      </form>
    </>
  );
}

/** One person's film beside the tanks of all: what they plan, start, correct or stop. */
export function Desk({ name, onDone }: { name: string; onDone: () => void }) {
  const { sink } = useWords();
  const room = useRoom();
  const views = useRoomPart((state) => state.views);
  const plan = useRoomPart((state) => state.plan);
  const cards = useRoomPart((state) => state.cards);
  const fault = useRoomPart((state) => state.fault);
  const isOpen = useRoomPart((state) => state.link === "open");
  const fill = useRoomPart((state) => state.fill);
  const forms = useFormDesk();
  useReopenedForm();
  const [isPlanning, setPlanning] = useState(views.length === 0 && plan === null);
  const card = cards.find((each) => each.name === "plan");
  useEffect(() => room.clearFault, []);
  return (
    <>
      <h2>{name}</h2>
      {fill && <Forms first={fill.command} fill={fill} onClose={forms.close} />}
      {fault !== null && (
        <p class="fault" role="alert">
          {fault}
        </p>
      )}
      {isPlanning && card ? (
        <CommandForm card={card} onBack={() => setPlanning(false)} onDone={() => setPlanning(false)} />
      ) : (
        <>
          <PlanCard onPlan={() => setPlanning(true)} />
          {views.map((view) => (
            <RunCard key={view.run} view={view} />
          ))}
          {plan === null && (
            <button type="button" class="key main" disabled={!isOpen} onClick={() => setPlanning(true)}>
              {sink.plan}
            </button>
          )}
          <NewestReply />
          {views.length === 0 && (
            <button type="button" class="key" onClick={onDone}>
              {sink.done}
            </button>
          )}
        </>
      )}
    </>
  );
}

/** The answer to what was pressed while this was open: an older one is no answer. */
function NewestReply() {
  const events = useRoomPart((state) => state.events);
  const since = useRef(events[events.length - 1]?.id ?? 0);
  const reply = [...events].reverse().find(({ kind, id }) => kind === "reply" && id > since.current);
  return reply ? <Said text={reply.text} /> : null;
}
